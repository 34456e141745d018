package loftcoil.runner.handout;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** Makes a PDF of a page of ours: tagged (PDF/UA), its fonts in it, drawn without a look at any other file. */
final class HandoutPdf {

    private static final String FONTS = "fonts/";
    private static final Set<FSFontUseCase> EVERYWHERE =
            EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG, FSFontUseCase.FALLBACK_PRE);
    private static final int PLAIN = 400;
    private static final int BOLD = 700;

    /** Held, so that it stays silent: the writer talks of fonts that a sheet never uses. */
    private static final Logger FONT_TALK = Logger.getLogger("org.apache.pdfbox");

    private static final Pattern PICTURE = Pattern.compile("(<svg\\b[^>]*)(?=>\\s*<title[^>]*>([^<\"]*)</title>)()");

    private static final String HEADS_ONCE = "table { -fs-table-paginate: auto; }\n";

    private static final double MM_PER_INCH = 25.4;

    /** Paper without an end, to lay out on. */
    private static final String ENDLESS = "@page { size: 216mm 30000mm; }\n";

    private HandoutPdf() {}

    /**
     * The PDF of a page.
     *
     * @param xhtml a whole page, well formed, with its language, a title and the size of its paper in its style sheet
     */
    static byte[] of(String xhtml) {
        XRLog.setLoggingEnabled(false);
        FONT_TALK.setLevel(Level.OFF);
        try {
            return written(xhtml);
        } catch (NullPointerException slipOfTheWriter) {
            // Where a page ends inside some tables the writer cannot tag the head it repeats
            // (PdfBoxAccessibilityHelper). Without
            // repeated heads the same sheet is written whole.
            return written(xhtml.replace("</style>", HEADS_ONCE + "</style>"));
        }
    }

    /**
     * The heights of the blocks of a page, laid out and not written.
     *
     * @param xhtml a whole page with elements of the class {@code block}, none within another
     * @return height of each in reading order, mm
     */
    static List<Double> heightsMm(String xhtml) {
        XRLog.setLoggingEnabled(false);
        FONT_TALK.setLevel(Level.OFF);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer();
                PdfBoxRenderer renderer = builder(xhtml.replace("</style>", ENDLESS + "</style>"), drawer)
                        .toStream(OutputStream.nullOutputStream())
                        .buildPdfRenderer()) {
            renderer.layout();
            List<Double> heights = new ArrayList<>();
            double mmPerDot = MM_PER_INCH / renderer.getSharedContext().getDPI();
            collect(renderer.getRootBox(), mmPerDot, heights);
            return heights;
        }
    }

    private static void collect(Box box, double mmPerDot, List<Double> heights) {
        Element element = box.getElement();
        if (element != null && element.getAttribute("class").equals("block")) {
            heights.add(box.getHeight() * mmPerDot);
            return;
        }
        box.getChildren().forEach(child -> collect(child, mmPerDot, heights));
    }

    private static byte[] written(String xhtml) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder(xhtml, drawer).toStream(out).run();
            return out.toByteArray();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static PdfRendererBuilder builder(String xhtml, BatikSVGDrawer drawer) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Loftcoil");
        builder.useUriResolver((base, uri) -> uri);
        builder.useHttpStreamImplementation(HandoutPdf::nothingFromOutside);
        font(builder, "DejaVuSansCondensed.ttf", "Sheet Sans", PLAIN, FontStyle.NORMAL);
        font(builder, "DejaVuSansCondensed-Bold.ttf", "Sheet Sans", BOLD, FontStyle.NORMAL);
        font(builder, "DejaVuSansCondensed-Oblique.ttf", "Sheet Sans", PLAIN, FontStyle.ITALIC);
        font(builder, "DejaVuSansMono.ttf", "Sheet Mono", PLAIN, FontStyle.NORMAL);
        builder.useUnicodeLineBreaker(new SpaceBreaker());
        builder.withHtmlContent(withAlternatives(xhtml), null);
        builder.useSVGDrawer(drawer);
        return builder;
    }

    /** The writer takes what a picture says from an attribute; in a browser the picture's own title says it. */
    private static String withAlternatives(String xhtml) {
        return PICTURE.matcher(xhtml).replaceAll("$1 alt=\"$2\"$3");
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        byte[] bytes = bytes(file);
        builder.useFont(() -> new ByteArrayInputStream(bytes), family, weight, style, true, EVERYWHERE);
    }

    private static byte[] bytes(String file) {
        try (InputStream in = HandoutPdf.class.getResourceAsStream(FONTS + file)) {
            if (in == null) {
                throw new IllegalStateException(FONTS + file + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(file, failure);
        }
    }

    private static FSStream nothingFromOutside(String uri) {
        throw new IllegalStateException("a sheet needs nothing from " + uri);
    }
}
