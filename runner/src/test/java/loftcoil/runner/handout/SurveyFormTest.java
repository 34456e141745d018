package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.DesignFields;
import loftcoil.engine.survey.Station;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.Html;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** The form to measure a house with. */
class SurveyFormTest {

    @Test
    void everyStationAndEveryQuestionOfTheSurveyIsOnTheForm() {
        String html = SurveyForm.html(Paper.A4, Units.METRIC);

        for (Station station : Station.values()) {
            assertTrue(html.contains("form-" + station.code()), station.code());
            for (String path : station.paths()) {
                boolean byMonth = station == Station.CLIMATE;
                String label = DesignFields.at(path).orElseThrow().label();
                assertTrue(byMonth || html.contains(Html.text(label)), label);
            }
        }
        assertFalse(html.contains("<script"));
    }

    @Test
    void inUsUnitsNoMetricUnitIsAskedFor() {
        String html = SurveyForm.html(Paper.LETTER, Units.US);

        assertTrue(html.contains("<td>ft, in</td>"));
        assertTrue(html.contains("<td>°F</td>"));
        assertFalse(html.contains("<td>m</td>"));
        assertFalse(html.contains("<td>L</td>"));
    }

    @Test
    void asPdfItFitsOnAFewSheets() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(SurveyForm.pdf(Paper.A4, Units.METRIC))) {
            assertTrue(pdf.getNumberOfPages() <= 9, pdf.getNumberOfPages() + " pages");
            assertEquals(Paper.A4.widthMm(), pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.5);
        }
    }
}
