package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.words.Units;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many pages a build sheet takes, with all that clears its dangers: nobody carries a book to the workshop. */
@Tag("thorough")
class SheetPagesTest {

    private static final Pattern HEAD = Pattern.compile("<h[23][^>]*>(.*?)</h[23]>|<thead><tr>(.*?)</tr></thead>");

    @ParameterizedTest
    @CsvSource({"ORCHARD_BOTHY, 11", "MARSH_HUT, 9", "UPLAND_BARN, 10", "SOUTH_CABIN, 10"})
    void aSheetIsNoBook(Dwelling dwelling, int most) throws IOException {
        BuildSheet sheet = BuildSheet.of(dwelling.design());
        Optional<Clears> clears = Optional.of(ClearSearch.of(dwelling.design()));
        for (Paper paper : Paper.values()) {
            for (Units units : Units.values()) {
                SheetSetting setting = new SheetSetting(paper, units, LocalDate.of(2031, 3, 9));
                try (PDDocument pdf = Loader.loadPDF(HandoutHtml.buildSheetPdf(sheet, clears, setting))) {
                    assertTrue(pdf.getNumberOfPages() <= most, paper + " " + units + " " + pdf.getNumberOfPages());
                    noHeadStandsAlone(pdf, HandoutHtml.buildSheet(sheet, clears, setting));
                }
            }
        }
    }

    /** What a page ends with is no heading, of a table neither: the line before the foot of the page, which names the program. */
    private static void noHeadStandsAlone(PDDocument pdf, String html) throws IOException {
        List<String> heads = HEAD.matcher(html)
                .results()
                .map(found -> found.group(found.group(1) == null ? 2 : 1)
                        .replace("</th>", " ")
                        .replaceAll("<[^>]*>", "")
                        .strip())
                .toList();
        assertTrue(heads.size() > 30, heads.toString());
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            List<String> lines = stripper.getText(pdf)
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
            assertTrue(lines.get(lines.size() - 1).startsWith("Loftcoil"), lines.toString());
            String last = lines.get(lines.size() - 2);
            assertFalse(heads.contains(last), "page " + page + " ends with the heading " + last);
        }
    }
}
