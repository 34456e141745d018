package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Units chosen once on the page, and then held by all of it. */
@Tag("thorough")
class UnitsBrowserTest extends PrintedCourseCase {

    private static final Course COURSE = CourseReader.builtIn();
    /** But for the name by which a tube of a metric standard is asked for. */
    private static final Pattern METRIC =
            Pattern.compile("(?<![\\w./])\\d[\\d.,]* ?(?:mm/m|mm|cm|m|m²|cm²|L|L/min|kg|kg/h|kg/s|g"
                    + "|°C|K|Pa|kPa|N|kN/m²|mg/L|litres a minute)(?![\\w/²³]| to EN 1057)");

    @Override
    protected Course course() {
        return COURSE;
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    /** All that stands there, folded or not. */
    private static String all(String css) {
        return String.valueOf(browser.driver()
                .executeScript(
                        """
                return [...document.querySelectorAll(arguments[0])].map((place) => {
                  const texts = [];
                  const walk = document.createTreeWalker(place, NodeFilter.SHOW_TEXT);
                  while (walk.nextNode()) texts.push(walk.currentNode.data);
                  place.querySelectorAll('input').forEach((field) => texts.push(field.value));
                  return texts.join(' | ');
                }).join(' || ')""",
                        css));
    }

    private static void noMetric(String css, String wanted) {
        String text = all(css);
        assertEquals(
                List.of(),
                METRIC.matcher(text).results().map(MatchResult::group).toList(),
                () -> css + ": " + text);
        assertTrue(text.contains(wanted), () -> css + " has no " + wanted + ": " + text);
    }

    private static void open(String view, String css) {
        browser.driver().executeScript("location.hash = '#/' + arguments[0]", view);
        browser.until(view, () -> !browser.driver()
                .findElements(By.cssSelector("main:not([aria-busy]) " + css))
                .isEmpty());
    }

    private void chooseUs() {
        browser.click(one("#units-ask button:nth-of-type(2)"));
        browser.until(
                "US units", () -> one("html").getDomAttribute("data-units").equals("us"));
        browser.waitForLesson();
        browser.until("the panel", () -> all("#loop").contains("°F"));
    }

    @Test
    void theFirstVisitAsksAndTheAnswerIsKept() throws Exception {
        assertTrue(one("#units-ask").isDisplayed());
        chooseUs();
        assertFalse(one("#units-ask").isDisplayed());
        restart();
        assertEquals(Units.US, bench.units());
        assertFalse(one("#units-ask").isDisplayed());
        assertTrue(all("#loop").contains("°F"));
        new Select(one("#units-choice")).selectByValue("metric");
        browser.until("metric units", () -> all("#loop").contains("°C"));
        assertEquals(Units.METRIC, bench.units());
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void theQuestionCanBeLeftOpen() {
        browser.click(one("#units-ask .plain"));
        assertFalse(one("#units-ask").isDisplayed());
        assertFalse(bench.course().unitsSaid());
        soundAtAllSizes("the first lesson");
    }

    @Test
    void onceUsUnitsAreChosenEveryPartOfThePageShowsThemAlone() {
        soundAtAllSizes("the question");
        chooseUs();
        noMetric("#loop", "°F");

        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        noMetric("#step-move-the-tank .slider", " ft");
        noMetric("#step-move-the-tank .result figure", "US gal/min");
        assertTrue(all("#step-move-the-tank").contains("Java reckons in metric units"));

        open("house", ".stations, h1");
        browser.until("the stations", () -> !all("main input").isEmpty());
        noMetric("main .asked, main .standing, main table", "ft");

        open("rebuild", ".part");
        browser.until("before and after", () -> all("main .result-place").contains("°F"));
        noMetric("main .part .lever-field, main .part .was", "ft");
        noMetric("main .result-place", "°F");

        open("build-sheet", "iframe");
        browser.until("the sheet", () -> sheet().contains("°F"));
        assertEquals(
                List.of(),
                METRIC.matcher(sheet()).results().map(MatchResult::group).toList());
        assertEquals(List.of(), browser.troubles());
    }

    private static void lever(String part, String name, String typed) {
        WebElement fold = browser.driver().findElements(By.cssSelector("main details.part")).stream()
                .filter(each ->
                        each.findElement(By.cssSelector("summary")).getText().startsWith(part))
                .findFirst()
                .orElseThrow();
        if (fold.getDomAttribute("open") == null) {
            browser.click(fold.findElement(By.cssSelector("summary")));
        }
        one("#lever-" + name).sendKeys(Keys.chord(Keys.CONTROL, "a"), typed);
    }

    private static void press(String words) {
        browser.click(browser.driver().findElements(By.cssSelector("main button")).stream()
                .filter(button -> button.isDisplayed() && button.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words)));
    }

    private static void until(String words) {
        browser.until(words, () -> all("main").contains(words));
    }

    @Test
    void aRebuildIsTypedInUsUnitsFromItsFirstNumberToTheDesign() {
        chooseUs();
        browser.click(browser.driver().findElement(By.linkText("Rebuild")));
        until("is the example's and not your fire's");
        soundAtAllSizes("borrowed heat");

        lever("Tank", "tank-baseM", "8 ft 6");
        until("Tank base above the floor: 8 ft 6 in");
        assertTrue(all(".heat-borrowed").contains("2.0 kW"), all(".heat-borrowed"));
        lever("Fire", "fire-burnKgPerH", "3 gal");
        browser.until("the refusal", () -> !all("main .rebuild > [role=alert]").isBlank());
        assertEquals(
                "Heater and fire, Wood burnt in an hour: “3 gal”; allowed: a mass flow, such as in lb/h (the unit does not fit)",
                one("main .rebuild > [role=alert] li").getText());
        assertEquals("true", one("#lever-fire-burnKgPerH").getDomAttribute("aria-invalid"));
        browser.troubles();
        lever("Fire", "fire-burnKgPerH", "4 1/2 lb");
        until("the new one's is worked out from its fire");
        lever("Tank", "tank-volumeL", "40");
        until("Water the tank holds when full to the brim: 40.00 US gal");
        noMetric("main .result-place", "US gal/min");
        // Heat reads in kilowatts for every reader; glass and foam in the unit that stands on them in the shop.
        String besides = all("main .result-place").replace("Btu/(h ft² °F)", "").replace("ft² h °F/Btu", "");
        assertFalse(besides.contains("Btu"), besides);

        press("March the year too");
        browser.until("the year", () -> all(".figures summary").contains("Year "));
        noMetric("main .result-place", "kWh");
        press("Take it over as my design");
        until("It is your design now.");
        noMetric("main .take", "ft");

        Design own = DesignJson.read(bench.rebuild().own().json());
        assertEquals(8.5 * 0.3048, own.tank().baseM(), 1e-6);
        assertEquals(4.5 * 0.45359237, own.fire().orElseThrow().burnKgPerH(), 1e-6);
        assertEquals(40 * 3.785411784, own.tank().volumeL(), 1e-6);
        assertTrue(own.coil().heatKW().isEmpty(), "the example's heat is gone");
        assertEquals(List.of(), browser.troubles());
    }

    private static String sheet() {
        browser.driver().switchTo().frame(one(".sheet-place iframe"));
        String text = one("body").getText();
        browser.driver().switchTo().defaultContent();
        return text;
    }
}
