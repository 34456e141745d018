package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.design.Origin;
import loftcoil.engine.design.Tank;
import loftcoil.runner.course.Course;
import loftcoil.runner.show.PaperHouse;
import loftcoil.runner.show.SurveyView;
import loftcoil.runner.show.TryCourse;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Whole houses surveyed from scratch by typing and clicking alone, from a paper with numbers on it to the build sheet as PDF. */
@Tag("thorough")
class OwnHouseBrowserTest extends PrintedCourseCase {

    @Override
    protected Course course() {
        return TryCourse.read();
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    private static void until(String words) {
        browser.until(words, () -> one("main").getText().contains(words));
    }

    private static void press(String place, String words) {
        browser.click(all(place + " button").stream()
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError(place + ": no button " + words)));
    }

    private static void type(WebElement field, String text) {
        if (field.getTagName().equals("select")) {
            new Select(field).selectByVisibleText(text);
            return;
        }
        // As a person types over what stands there; a field that is cleared first gets its old answer back once it is
        // left.
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    /** Everything on the paper, stop by stop, the way the page asks for it. */
    private void survey(PaperHouse house) throws Exception {
        browser.click(browser.driver().findElement(By.linkText("House")));
        browser.until("the house", () -> !all("main:not([aria-busy]) .station").isEmpty());
        for (SurveyView.Station station : bench.survey().house().stations()) {
            String place = "#station-" + station.code();
            if (one(place).getDomAttribute("open") == null) {
                browser.click(one(place + " summary"));
            }
            switch (station.code()) {
                case "climate" -> climate(house);
                case "hot-run" -> pieces(place, house.hot());
                case "cold-run" -> pieces(place, house.cold());
                case "taps" -> taps(place, house);
                default -> {}
            }
            for (SurveyView.Question question : station.questions()) {
                if (house.answers().containsKey(question.path())) {
                    answer(question.path(), house.answers().get(question.path()));
                }
            }
            // The taps stand by now; who drew at the example's is asked again for one's own.
            if (station.code().equals("taps")) {
                habits(house);
            }
        }
        browser.until(
                "all that was typed is answered",
                () -> one("#station-water").getText().contains("yours"));
        assertEquals(
                List.of(),
                all("main .trouble").stream()
                        .filter(WebElement::isDisplayed)
                        .map(WebElement::getText)
                        .toList());
    }

    private static void answer(String path, String told) {
        String name = "#asked-" + path.replaceAll("\\W", "-");
        boolean guessed = told.startsWith("~");
        if (guessed) {
            browser.click(one(name + "-guess"));
        }
        String text = guessed ? told.substring(1).strip() : told;
        if (text.equals(standing(one(name))) && !guessed) {
            // Who agrees with what stands there has to be able to say so.
            press(name.replace("#asked-", "#row-"), "It is so");
            return;
        }
        type(one(name), text);
    }

    private static String standing(WebElement field) {
        return field.getTagName().equals("select")
                ? new Select(field).getFirstSelectedOption().getText()
                : String.valueOf(field.getDomProperty("value"));
    }

    private static void climate(PaperHouse house) {
        house.skies().forEach((name, text) -> type(one("#sky-" + name), text));
        if (!house.skies().isEmpty()) {
            press("#station-climate", "Estimate sun and air");
            until("Estimated; the sun may be a quarter off either way.");
        }
    }

    private static void pieces(String place, List<Map<String, String>> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            if (i > 0) {
                press(place, "Another piece");
            }
            row(place, i, pieces.get(i));
        }
    }

    private static void row(String place, int at, Map<String, String> texts) {
        String line = place + " .walked-line:nth-child(" + (at + 1) + ") ";
        texts.forEach((name, told) -> {
            boolean guessed = told.startsWith("~");
            if (!told.isEmpty()) {
                type(
                        one(line + "[name=" + name + "]"),
                        guessed ? told.substring(1).strip() : told);
            }
            if (guessed) {
                type(one(line + "[name=measured]"), "guessed");
            }
        });
    }

    private static void taps(String place, PaperHouse house) {
        while (all(place + " .walked-line").size() > house.taps().size()) {
            browser.click(one(place + " .walked-line:last-child button"));
        }
        house.trunk().forEach((name, text) -> type(one("#trunk-" + name), text));
        for (int i = 0; i < house.taps().size(); i++) {
            if (i >= all(place + " .walked-line").size()) {
                press(place, "Another tap");
            }
            row(place, i, house.taps().get(i));
        }
    }

    private static void habits(PaperHouse house) {
        browser.until("own taps among the habits", () -> all("#habit-tub option").stream()
                .anyMatch(option -> "shower".equals(option.getDomAttribute("value"))));
        house.habits().forEach((name, text) -> type(one("#habit-" + name), text));
        press("#station-people", "Work out the draws");
        until("The draws of a mean day follow these habits now.");
    }

    private Design taken() {
        SurveyView.House house = bench.survey().house();
        assertEquals(List.of(), house.standing().open());
        assertEquals(
                List.of(),
                house.stations().stream()
                        .filter(station -> !station.done())
                        .map(station -> station.label() + ": " + station.standing())
                        .toList(),
                "nothing is borrowed any more");
        press("main", "Make it my design");
        until("It is your design now.");
        return DesignJson.read(bench.rebuild().own().json());
    }

    /** Parts that are told together are asked for until all of them are there; nothing else is refused. */
    private static List<String> otherTroubles() {
        return browser.troubles().stream()
                .filter(trouble -> !trouble.contains("/api/survey-tell"))
                .toList();
    }

    /** The text of the build sheet that the page saves. */
    private static String pdf() throws Exception {
        browser.click(browser.driver().findElement(By.linkText("Build sheet")));
        browser.until(
                "the sheet", () -> !all(".sheet-place:not([aria-busy]) iframe").isEmpty());
        Object bytes = browser.driver()
                .executeAsyncScript(
                        """
                const done = arguments[arguments.length - 1];
                fetch(document.querySelector('a.button').href).then(async (answer) => {
                  const bytes = new Uint8Array(await answer.arrayBuffer());
                  let text = '';
                  for (const byte of bytes) text += String.fromCharCode(byte);
                  done(btoa(text));
                }, (error) => done(''));
                """);
        try (PDDocument pdf = Loader.loadPDF(Base64.getDecoder().decode(String.valueOf(bytes)))) {
            assertTrue(pdf.getNumberOfPages() > 8, pdf.getNumberOfPages() + " pages");
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void aMillCottageInTheNorthInMetres() throws Exception {
        survey(PaperHouse.MILL);
        soundAtAllSizes("a whole house");
        Design own = taken();

        assertEquals(0, Grounds.of(own).borrowed(), Grounds.of(own).words());
        assertEquals(2, own.fire().orElseThrow().lightings().size());
        assertEquals(List.of(10, 11, 12, 1, 2, 3, 4), own.fire().orElseThrow().months());
        assertEquals(Origin.ASSUMED, own.origin("fire.burnKgPerH"));
        assertEquals(Origin.YOURS, own.origin("fire.litFromH"));
        assertEquals(0.94, own.tank().waterlineM(), 1e-9);
        assertEquals(
                2.10, own.hotLegs().stream().mapToDouble(leg -> leg.riseM()).sum(), 1e-9);
        assertEquals(
                -2.06, own.coldLegs().stream().mapToDouble(leg -> leg.riseM()).sum(), 1e-9);
        assertEquals(2.5, own.trunk().orElseThrow().lengthM());
        assertEquals(
                7,
                own.use().stream()
                        .mapToDouble(use -> use.atH() == 12.5 ? use.litres() : 0)
                        .sum(),
                1e-9);
        String sheet = pdf();
        assertTrue(sheet.contains("Mill cottage"), sheet.substring(0, 300));
        assertFalse(sheet.contains("borrowed from an example"), sheet.substring(0, 900));
        assertEquals(List.of(), otherTroubles());
    }

    @Test
    void aPrairieCabinInFeetAndInches() throws Exception {
        survey(PaperHouse.CABIN);
        Design own = taken();

        assertEquals(0, Grounds.of(own).borrowed(), Grounds.of(own).words());
        assertEquals(88 * 0.0254, own.tank().baseM(), 1e-6);
        assertEquals(40 * 3.785411784, own.tank().volumeL(), 1e-4);
        assertEquals(
                74 * 0.0254,
                own.hotLegs().stream().mapToDouble(leg -> leg.riseM()).sum(),
                1e-4);
        assertEquals("B88 L 1", own.hotLegs().get(1).tube());
        assertEquals(Origin.ASSUMED, own.origin("site.monthly.meanAirC"));
        assertEquals(22.2, own.site().monthly().meanAirC().get(6), 0.06, "72 °F in July");
        assertTrue(pdf().contains("Prairie cabin"));
        assertEquals(List.of(), otherTroubles());
    }

    @Test
    void aShearersHutInTheSouth() throws Exception {
        survey(PaperHouse.HUT);
        assertEquals(List.of(), bench.survey().house().standing().doubts());
        Design own = taken();

        assertEquals(0, Grounds.of(own).borrowed(), Grounds.of(own).words());
        assertEquals(2, own.site().monthly().meanAirC().get(6), 0.01, "July");
        assertEquals(16, own.site().monthly().meanAirC().get(0), 0.01, "January");
        assertEquals(Tank.Kind.LYING_CYLINDER, own.tank().kind().orElseThrow());
        assertTrue(own.coldLegs().get(1).isOutdoors());
        String sheet = pdf();
        assertTrue(sheet.contains("Shearers hut"), sheet.substring(0, 300));
        assertTrue(sheet.contains("Do not light a fire under this as drawn"), sheet.substring(0, 900));
        assertTrue(sheet.contains("July"), "the frost of the empty months is told");
        assertEquals(List.of(), otherTroubles());
    }
}
