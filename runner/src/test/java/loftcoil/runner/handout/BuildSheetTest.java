package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.build.LogForm;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.caution.WorkStep;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.Html;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The build sheet as a page and as a PDF: all of it is there, on the paper and in the units asked for. */
class BuildSheetTest {

    private static final LocalDate DAY = LocalDate.of(2031, 3, 9);
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final BuildSheet BOTHY = BuildSheet.of(Example.orchardBothy());

    private static final Map<Paper, byte[]> PDFS = new EnumMap<>(Paper.class);

    /** The bothy's, written once for each paper and its units. */
    private static byte[] pdf(Paper paper, Units units) {
        return PDFS.computeIfAbsent(
                paper, key -> HandoutHtml.buildSheetPdf(BOTHY, Optional.empty(), setting(key, units)));
    }

    private static SheetSetting setting(Paper paper, Units units) {
        return new SheetSetting(paper, units, DAY);
    }

    private static String html(BuildSheet sheet, Units units) {
        return HandoutHtml.buildSheet(sheet, setting(Paper.A4, units));
    }

    private static String words(String html) {
        return PdfText.plain(html.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]+>", " ")
                .replace("&lt;", "<")
                .replace("&quot;", "\"")
                .replace("&amp;", "&"));
    }

    @ParameterizedTest
    @CsvSource({"A4, METRIC, 210, 297", "LETTER, US, 215.9, 279.4"})
    void thePdfHasThePaperAskedForAndItsFontsInIt(Paper paper, Units units, double widthMm, double heightMm)
            throws IOException {
        byte[] pdf = pdf(paper, units);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() >= 8, "" + document.getNumberOfPages());
            assertTrue(document.getNumberOfPages() <= 11, "" + document.getNumberOfPages());
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDRectangle box = document.getPage(i).getMediaBox();
                assertEquals(widthMm * POINTS_PER_MM, box.getWidth(), 0.5);
                assertEquals(heightMm * POINTS_PER_MM, box.getHeight(), 0.5);
                String text = PdfText.page(document, i + 1);
                assertTrue(text.contains("Orchard bothy 9 March 2031"), text);
                assertTrue(text.contains("page " + (i + 1) + " of " + document.getNumberOfPages()), text);
            }
            assertTrue(PdfText.fonts(document).values().stream().allMatch(embedded -> embedded));
            assertEquals(
                    "Build sheet: Orchard bothy",
                    document.getDocumentInformation().getTitle());
        }
    }

    @Test
    void thePdfSaysAllThatThePageSays() throws IOException {
        String pdf = PdfText.of(pdf(Paper.A4, Units.METRIC)).replace(" ", "");
        BOTHY.figures().forEach(figure -> assertTrue(pdf.contains(figure.label().replace(" ", "")), figure.label()));
        BOTHY.cuts().pieces().forEach(piece -> assertTrue(pdf.contains(piece.mark()), piece.mark()));
        for (Caution caution : BOTHY.cautions()) {
            assertTrue(pdf.contains(caution.text().substring(0, 40).replace(" ", "")), caution.text());
        }
        for (LogForm form : BOTHY.logs()) {
            assertTrue(
                    pdf.contains(form.title().metric().replace(" ", "")),
                    form.title().metric());
        }
    }

    @Test
    void everythingTheEngineSaysIsOnThePage() {
        String page = words(html(BOTHY, Units.METRIC));
        BOTHY.figures().forEach(figure -> assertTrue(page.contains(figure.label()), figure.label()));
        BOTHY.parts()
                .parts()
                .forEach(part -> assertTrue(
                        page.contains(part.group().label()), part.what().metric()));
        BOTHY.cuts().pieces().forEach(piece -> assertTrue(page.contains(piece.mark()), piece.mark()));
        BOTHY.loads()
                .loads()
                .forEach(load -> assertTrue(
                        page.contains(load.what().metric()), load.what().metric()));
        BOTHY.cautions().forEach(caution -> assertTrue(page.contains(PdfText.plain(caution.text())), caution.text()));
        BOTHY.asks().forEach(ask -> assertTrue(page.contains(ask.text()), ask.text()));
        BOTHY.filling()
                .steps()
                .forEach(step -> assertTrue(page.contains(step.stage().label())));
        BOTHY.upkeep()
                .tasks()
                .forEach(task -> assertTrue(page.contains(task.when().label())));
        for (Leg leg : BOTHY.design().hotLegs()) {
            assertTrue(page.contains(leg.name()), leg.name());
        }
    }

    @Test
    void cautionsStandOnTheFirstPageAndWhereTheyMatter() {
        String page = html(BOTHY, Units.METRIC).replace('\u00a0', ' ');
        assertFalse(BOTHY.cautions().isEmpty());
        int figures = page.indexOf("id=\"figures\"");
        for (Caution caution : BOTHY.cautions()) {
            int at = page.indexOf(Html.text(caution.text()));
            assertTrue(at > 0 && at < figures, caution.code());
        }
        for (WorkStep step : WorkStep.values()) {
            int from = page.indexOf("id=\"" + step.name().toLowerCase(Locale.ROOT) + "\"");
            String section = page.substring(from, page.indexOf("</section>", from));
            for (Caution caution : BOTHY.cautions()) {
                assertEquals(
                        caution.kind().beside().contains(step),
                        section.contains(Html.text(caution.text()) + "</p>"),
                        step + " " + caution.code());
            }
        }
    }

    /** It can be hung beside the heater: nothing of it on another page, nothing else on its own. */
    @ParameterizedTest
    @CsvSource({"A4, METRIC, 130 g", "LETTER, US, 4.6 oz"})
    void theTableOfConductHasAPageOfItsOwn(Paper paper, Units units, String charge) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(paper, units))) {
            List<String> pages = IntStream.rangeClosed(1, document.getNumberOfPages())
                    .mapToObj(page -> page(document, page))
                    .filter(text -> text.contains("In an emergency"))
                    .toList();
            assertEquals(1, pages.size());
            for (Conduct rule : Conduct.values()) {
                assertTrue(
                        pages.get(0)
                                .contains(
                                        rule.when().metric() + " " + rule.act().metric()),
                        pages.get(0));
            }
            assertTrue(pages.get(0).contains("Weighed charge of this design: " + charge), pages.get(0));
            assertTrue(pages.get(0).contains(Conduct.worth().metric()), pages.get(0));
            assertFalse(pages.get(0).contains("Figures"), pages.get(0));
        }
    }

    private static String page(PDDocument document, int number) {
        try {
            return PdfText.page(document, number);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void aLoopThatDoesNotGoIsToldFirst() {
        Design low = Changes.apply(Example.orchardBothy(), "tank.baseM", "-1.5");
        BuildSheet sheet = BuildSheet.of(low);
        assertFalse(sheet.buildable());

        String page = words(html(sheet, Units.METRIC));

        int told = page.indexOf("Do not build this as drawn");
        assertTrue(told > 0 && told < page.indexOf("What can hurt", told), page.substring(0, 400));
        assertTrue(
                page.indexOf(PdfText.plain(sheet.verdict().metric().replace("*", ""))) > told,
                sheet.verdict().metric());
    }

    @Test
    void unitsSwitchEverywhere() {
        String us = words(html(BOTHY, Units.US));
        // In names of tubes alone; heat reads in kilowatts for every reader.
        String alone = "(?<![\\d.x])\\d+(?:\\.\\d+)? (?:°C|kg|L/min|L|m|kN/m²)(?![\\p{L}/²³])";
        List<String> found = Pattern.compile(alone)
                .matcher(us)
                .results()
                .map(match -> us.substring(Math.max(0, match.start() - 40), match.end() + 20))
                .toList();
        assertEquals(List.of(), found);
        assertTrue(us.contains("ft") && us.contains("°F") && us.contains("US gal"), us);
    }

    @Test
    void thePageNeedsNoOtherFileAndRunsNoScript() {
        String page = html(BOTHY, Units.METRIC);
        assertFalse(page.matches("(?s).*<(?:script|link|img|iframe|object|embed)\\b.*"));
        assertFalse(page.matches("(?s).*(?:@import|url\\(|\\bon[a-z]+=\"|javascript:).*"));
        assertFalse(page.replace("http://www.w3.org/", "").contains("http"), "an address of another place");
    }

    @Test
    void aNameThatLooksLikeMarkupIsShownAsItIs() throws IOException {
        String json = DesignJson.write(Example.orchardBothy());
        Design odd = DesignJson.read(json.replace("\"Orchard bothy\"", "\"A <b>bold</b> & \\\"odd\\\" hut \\\\ }\""));
        BuildSheet sheet = BuildSheet.of(odd);
        assertTrue(html(sheet, Units.METRIC)
                .contains("<h1>A &lt;b&gt;bold&lt;/b&gt; &amp; &quot;odd&quot; hut \\ }</h1>"));
        String pdf = PdfText.of(HandoutHtml.buildSheetPdf(sheet, Optional.empty(), setting(Paper.A4, Units.METRIC)));
        assertTrue(pdf.contains("A <b>bold</b> & \"odd\" hut \\ } 9 March 2031"), pdf.substring(0, 300));
    }
}
