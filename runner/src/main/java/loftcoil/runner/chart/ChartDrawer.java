package loftcoil.runner.chart;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.DoubleStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.look.Colours;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws a chart order: an SVG that stands alone or within a page, its words, and its numbers as a table. */
public final class ChartDrawer {

    private static final String INK = Colours.light().of("ink");
    private static final int AXIS_NAME = 20;
    private static final int ABOVE = 14;

    /** Tells the charts of one page apart. */
    private static final AtomicLong NEXT = new AtomicLong();

    private static final double LARGEST = 1e100;
    private static final double SMALLEST = 1e-100;

    private ChartDrawer() {}

    /**
     * The drawn chart; where its numbers cannot be drawn, the title and a note why.
     *
     * @param order at least one curve; gaps and empty curves are drawn as nothing
     */
    public static ChartPicture draw(ChartOrder order) {
        return notDrawn(order).map(why -> note(order, why)).orElseGet(() -> drawn(order));
    }

    /** A picture of words alone. */
    private static ChartPicture note(ChartOrder order, String why) {
        ChartTitle title = new ChartTitle(order.title());
        ChartTitle words = new ChartTitle(why);
        Document document = blank();
        String id = "lc-chart-" + NEXT.incrementAndGet();
        Element svg = root(document, title.height() + words.height() + AXIS_NAME, id);
        document.appendChild(svg);
        named(svg, "title", id + "-title", order.title());
        named(svg, "desc", id + "-desc", why);
        title.draw(svg);
        Element below = SvgElement.of(document, "g", Map.of("transform", "translate(0 " + title.height() + ")"));
        svg.appendChild(below);
        words.draw(below);
        return new ChartPicture(write(document), why, List.of(), List.of());
    }

    private static ChartPicture drawn(ChartOrder order) {
        String says = ChartWords.of(order);
        ChartTable table = ChartTable.of(order);
        return new ChartPicture(svg(order, says), says, table.columns(), table.rows());
    }

    private static String svg(ChartOrder order, String says) {
        ChartLegend legend = new ChartLegend(order);
        ChartTitle title = new ChartTitle(order.title());
        int nameY = title.height() + AXIS_NAME;
        int top = nameY + ABOVE + order.marks().size() * ChartAxes.MARK_ROW;
        ChartFrame frame = ChartFrame.of(order, top, legend.rows());
        Document document = blank();
        String id = "lc-chart-" + NEXT.incrementAndGet();
        Element svg = root(document, frame.height(), id);
        document.appendChild(svg);
        named(svg, "title", id + "-title", order.title());
        named(svg, "desc", id + "-desc", says);
        svg.setAttribute("data-readout", ChartReadout.of(order, frame));
        title.draw(svg);
        ChartNotes.shade(svg, order, frame);
        ChartAxes axes = new ChartAxes(svg, frame);
        axes.draw(order, nameY);
        svg.appendChild(curves(document, order, frame, id));
        ChartNotes.crossings(svg, order, frame);
        ChartNotes.ends(svg, order, frame);
        axes.marks(order);
        legend.draw(svg, frame);
        return write(document);
    }

    private static Element root(Document document, int height, String id) {
        Element svg = SvgElement.of(
                document,
                "svg",
                Map.of(
                        "viewBox", "0 0 " + ChartFrame.WIDTH + " " + height,
                        "class", "lc-chart",
                        "role", "img",
                        "font-family", "system-ui, sans-serif",
                        "font-size", "15",
                        "fill", INK));
        svg.setAttribute("aria-labelledby", id + "-title " + id + "-desc");
        return svg;
    }

    private static void named(Element svg, String name, String id, String words) {
        Element element = SvgElement.of(svg.getOwnerDocument(), name, Map.of("id", id));
        element.setTextContent(words);
        svg.appendChild(element);
    }

    private static Element curves(Document document, ChartOrder order, ChartFrame frame, String id) {
        Element clip = SvgElement.of(document, "clipPath", Map.of("id", id + "-clip"));
        // A little wider than the plotting area, so that a line or a point on its edge is whole.
        clip.appendChild(SvgElement.of(
                document,
                "rect",
                Map.of(
                        "x",
                        "-6",
                        "y",
                        "-6",
                        "width",
                        "" + (frame.plotWidth() + 12),
                        "height",
                        "" + (ChartFrame.PLOT_HEIGHT + 12))));
        Element group = SvgElement.of(
                document,
                "g",
                Map.of(
                        "transform", "translate(" + frame.left() + " " + frame.top() + ")",
                        "clip-path", "url(#" + id + "-clip)",
                        "fill", "none",
                        "stroke-width", "2.4",
                        "stroke-linejoin", "round"));
        group.appendChild(clip);
        CurvePaths.add(CurveShapes.draw(order, frame), group);
        return group;
    }

    private static Document blank() {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java cannot make XML", e);
        }
    }

    private static String write(Document document) {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter out = new StringWriter();
            transformer.transform(new DOMSource(document), new StreamResult(out));
            return out.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("this Java cannot write XML", e);
        }
    }

    /** Why a chart cannot be drawn, in a sentence: a loop that runs away ends in numbers whose distance is none any more. */
    static Optional<String> notDrawn(ChartOrder order) {
        DoubleStream xs = DoubleStream.concat(
                order.curves().stream().flatMapToDouble(curve -> doubles(curve.xs())),
                order.marks().stream().mapToDouble(ChartOrder.Mark::at));
        DoubleStream ys = order.curves().stream().flatMapToDouble(curve -> doubles(curve.ys()));
        return notDrawn("across", xs).or(() -> notDrawn("up", ys));
    }

    private static DoubleStream doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue);
    }

    private static Optional<String> notDrawn(String axis, DoubleStream values) {
        double most = values.filter(Double::isFinite).map(Math::abs).max().orElse(0);
        if (most > LARGEST) {
            return Optional.of("Not drawn: numbers too far apart to draw. The largest " + axis + " is "
                    + Numeral.shown(most, 3)
                    + "; allowed: up to " + Numeral.shown(LARGEST, 3) + ". Does a loop run away?");
        }
        return most > 0 && most < SMALLEST
                ? Optional.of("Not drawn: numbers too close together to draw. The largest " + axis + " is "
                        + Numeral.shown(most, 3)
                        + "; allowed: 0, or " + Numeral.shown(SMALLEST, 3) + " and more.")
                : Optional.empty();
    }
}
