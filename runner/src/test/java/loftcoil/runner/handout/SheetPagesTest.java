package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.words.Units;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many pages a build sheet takes, with all that clears its dangers: nobody carries a book to the workshop. */
@Tag("thorough")
class SheetPagesTest {

    @ParameterizedTest
    @CsvSource({"ORCHARD_BOTHY, 11", "MARSH_HUT, 10", "UPLAND_BARN, 10", "SOUTH_CABIN, 10"})
    void aSheetIsNoBook(Dwelling dwelling, int most) throws IOException {
        BuildSheet sheet = BuildSheet.of(dwelling.design());
        Optional<Clears> clears = Optional.of(ClearSearch.of(dwelling.design()));
        for (Paper paper : Paper.values()) {
            for (Units units : Units.values()) {
                SheetSetting setting = new SheetSetting(paper, units, LocalDate.of(2031, 3, 9));
                try (PDDocument pdf = Loader.loadPDF(HandoutHtml.buildSheetPdf(sheet, clears, setting))) {
                    assertTrue(pdf.getNumberOfPages() <= most, paper + " " + units + " " + pdf.getNumberOfPages());
                }
            }
        }
    }
}
