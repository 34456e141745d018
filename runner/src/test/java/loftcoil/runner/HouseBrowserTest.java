package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Origin;
import loftcoil.runner.course.Course;
import loftcoil.runner.page.LiveCourseCase;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A house measured on the page, by typing and clicking alone. */
@Tag("thorough")
class HouseBrowserTest extends LiveCourseCase {

    @Override
    protected Course course() {
        return TryCourse.read();
    }

    private void open() {
        browser.driver().executeScript("location.hash = '#/house'");
        browser.until("the house", () -> !all("main:not([aria-busy]) .station").isEmpty());
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    private static void fold(String code) {
        browser.click(one("#station-" + code + " summary"));
    }

    private static void type(String css, String text) {
        WebElement field = one(css);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    /** By the page's own hand, since stations may be drawn anew between finding and pressing. */
    private static void press(String words) {
        browser.until(
                words,
                () -> Boolean.TRUE.equals(browser.driver()
                        .executeScript(
                                "const button = [...document.querySelectorAll('main button')].find((one) => one.textContent === arguments[0]"
                                        + " && one.checkVisibility()); if (button) button.click(); return Boolean(button);",
                                words)));
    }

    private static void until(String words) {
        browser.until(words, () -> one("main").getText().contains(words));
    }

    @Test
    void aHouseInTheSouthIsMeasuredInFeetAndBecomesTheDesign() {
        open();
        soundAtAllSizes("nothing told");
        type("#asked-name", "Byre");
        type("#asked-site-latitudeDeg", "-42.1");
        browser.click(one("#asked-site-altitudeM-guess"));
        type("#asked-site-altitudeM", "1000 ft");
        until("1 value is yours, 3 assumed");

        fold("hot-run");
        List<WebElement> row = all("#station-hot-run .walked-line:first-child input");
        row.get(0).sendKeys("riser");
        row.get(1).sendKeys("4 ft 6", Keys.TAB);
        until("below the return port");
        until("A piece was forgotten that leads up");
        until("not for cutting");
        soundAtAllSizes("a run that misses");
        press("Make it my design");
        until("Not taken:");
        // The refusal that was meant.
        browser.troubles();

        WebElement length =
                all("#station-hot-run .walked-line:first-child input").get(1);
        length.clear();
        length.sendKeys("5 ft 10 7/8 in", Keys.TAB);
        until("The hot pipe ends at the return port, as it should.");
        press("Make it my design");
        until("It is your design now.");

        Design own = DesignJson.read(bench.rebuild().own().json());
        assertEquals("Byre", own.name());
        assertEquals(304.8, own.site().altitudeM(), 1e-9);
        assertEquals(Origin.ASSUMED, own.origin("site.altitudeM"));
        assertEquals(
                List.of("riser"), own.hotLegs().stream().map(leg -> leg.name()).toList());
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void whatIsTakenTogetherSaysWhatIsStillWanted() {
        open();
        fold("heater");
        type("#asked-safety-fireRoom-airOpeningCm2", "120");
        browser.until("the others are wanted", () -> all("#station-heater .trouble").stream()
                .anyMatch(line -> line.getText().startsWith("Tell this one too")));
        soundAtAllSizes("half a room");
        browser.driver()
                .executeScript("for (const name of ['carbonMonoxideAlarm', 'extractFan']) {"
                        + "const field = document.getElementById('asked-safety-fireRoom-' + name);"
                        + "field.value = 'true'; field.dispatchEvent(new Event('change')); }");
        browser.until(
                "all are kept",
                () -> all("#station-heater .trouble:not([hidden])").isEmpty()
                        && bench.survey().house().standing().yours() >= 3);

        type("#asked-fire-burnKgPerH", "3 m");
        until("Not taken: “3 m”");
        assertTrue(one("main").getText().contains("the unit does not fit"));

        // What was refused and what waits for its other half hold nobody else back.
        type("#asked-safety-flue-heightM", "5 m");
        type("#asked-site-roomC", "20.5");
        browser.until("the room is kept", () -> origin("site.roomC").equals("yours"));
        assertEquals("borrowed", origin("fire.burnKgPerH"));
        type("#asked-fire-burnKgPerH", "4 1/2 lb");
        browser.until("the wood is kept", () -> origin("fire.burnKgPerH").equals("yours"));
    }

    private String origin(String path) {
        return bench.survey().house().stations().stream()
                .flatMap(station -> station.questions().stream())
                .filter(question -> question.path().equals(path))
                .map(question -> question.origin())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void habitsAreWorkedOutAndAHouseWithoutGlassIsOne() {
        open();
        fold("people");
        type("#habit-people", "3");
        press("Work out the draws");
        until("The draws of a mean day follow these habits now.");
        fold("panes");
        press("There is no glass before my tank");
        browser.until("no panes", () -> bench.survey().house().stations().stream()
                .flatMap(station -> station.questions().stream())
                .anyMatch(question -> question.path().equals("window.areaM2")
                        && !question.origin().equals("borrowed")));
        press("Make it my design");
        until("It is your design now.");

        Design own = DesignJson.read(bench.rebuild().own().json());
        assertTrue(own.window().isEmpty());
        assertEquals(
                3 * 15,
                own.use().stream()
                        .filter(use -> use.atH() == 20)
                        .findFirst()
                        .orElseThrow()
                        .litres());
    }
}
