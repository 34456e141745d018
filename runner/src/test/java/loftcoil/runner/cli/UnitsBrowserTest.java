package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.page.BuildSheetPrinter;
import loftcoil.runner.page.LiveCourseCase;
import loftcoil.runner.show.CourseApp;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Units chosen once on the page, and then held by all of it. */
@Tag("thorough")
class UnitsBrowserTest extends LiveCourseCase {

    private static final Course COURSE = CourseReader.builtIn();
    private static final Pattern METRIC =
            Pattern.compile("(?<![\\w./])\\d[\\d.,]* ?(?:mm/m|mm|cm|m|m²|cm²|L|L/min|kg|kg/h|kg/s|g"
                    + "|°C|K|Pa|kPa|N|kN/m²|mg/L|litres a minute)(?![\\w/²³])");

    @Override
    protected Course course() {
        return COURSE;
    }

    @Override
    protected BuildSheetPrinter press(CourseApp opened) {
        return new HandoutPrinter(opened);
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
        assertTrue(all("#step-move-the-tank").contains("Java reckons and prints in metric units"));

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

    private static String sheet() {
        browser.driver().switchTo().frame(one(".sheet-place iframe"));
        String text = one("body").getText();
        browser.driver().switchTo().defaultContent();
        return text;
    }
}
