package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.page.LiveCourseCase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * A lesson, a question, a slider and a plot as a screen reader is given them: by the browser's own tree of what can be read, and by
 * what is said while the learner works.
 */
@Tag("thorough")
class SpokenBrowserTest extends LiveCourseCase {

    private static final String STEP = "move-the-tank";

    /** Notes what each live part of the page comes to say; what follows within a moment is one saying, as it is read out. */
    private static final String LISTEN =
            """
            window.heard = [];
            const live = (node) => {
              const part = (node.nodeType === 1 ? node : node.parentElement)?.closest('[aria-live], [role=status], [role=alert], output');
              const how = part && (part.getAttribute('aria-live') || (part.matches('[role=alert]') ? 'assertive' : 'polite'));
              return part && how !== 'off' && !part.closest('[aria-live=off]') ? part : null;
            };
            const waiting = new Map();
            window.listening?.disconnect();
            window.listening = new MutationObserver((changes) => {
              for (const part of new Set(changes.map((each) => live(each.target)).filter(Boolean))) {
                clearTimeout(waiting.get(part));
                waiting.set(part, setTimeout(() => {
                  const words = part.textContent.replace(/\\s+/g, ' ').trim();
                  if (words && part.checkVisibility()) window.heard.push(words);
                }, 150));
              }
            });
            window.listening.observe(document.body, {subtree: true, childList: true, characterData: true});
            """;

    @Override
    protected Course course() {
        return CourseReader.builtIn();
    }

    @BeforeEach
    void openTheLesson() {
        bench.choose(Units.METRIC);
        browser.reload();
        browser.goTo("02-tank-above-coil");
        // The judgement of the year is said too, some time after the page is open.
        browser.until("the year", () -> !browser.driver()
                .findElement(By.cssSelector("#loop .safety"))
                .getText()
                .contains("not judged yet"));
        listen();
    }

    private static void listen() {
        browser.driver().executeScript(LISTEN);
    }

    @SuppressWarnings("unchecked")
    private static List<String> heard() {
        return (List<String>) browser.driver().executeScript("return window.heard");
    }

    private static long times(String words) {
        return heard().stream().filter(said -> said.contains(words)).count();
    }

    /** Role, name, description, value and properties as the browser gives them to a screen reader. */
    private static Map<?, ?> given(WebElement element) {
        browser.driver().executeScript("window.asked = arguments[0]", element);
        Map<?, ?> object = (Map<?, ?>) browser.driver()
                .executeCdpCommand("Runtime.evaluate", Map.of("expression", "window.asked"))
                .get("result");
        List<?> nodes = (List<?>) browser.driver()
                .executeCdpCommand(
                        "Accessibility.getPartialAXTree",
                        Map.of("objectId", object.get("objectId"), "fetchRelatives", false))
                .get("nodes");
        return (Map<?, ?>) nodes.get(0);
    }

    private static String part(Map<?, ?> node, String name) {
        return node.get(name) instanceof Map<?, ?> value ? String.valueOf(value.get("value")) : "";
    }

    private static String property(Map<?, ?> node, String name) {
        return ((List<?>) node.get("properties"))
                .stream()
                        .map(each -> (Map<?, ?>) each)
                        .filter(each -> name.equals(each.get("name")))
                        .map(each -> part(each, "value"))
                        .findFirst()
                        .orElse("");
    }

    private static void isGiven(WebElement element, String role, String name) {
        Map<?, ?> node = given(element);
        assertEquals(role, part(node, "role"), node.toString());
        assertTrue(part(node, "name").contains(name), part(node, "name"));
    }

    @Test
    void eachPartHasItsRoleNameAndValue() {
        browser.run(STEP);
        isGiven(browser.in(STEP, ".CodeMirror-code"), "textbox", "Java: move the tank.");
        assertEquals("true", property(given(browser.in(STEP, ".CodeMirror-code")), "multiline"));
        isGiven(browser.in(STEP, ".sheet-foot .main"), "button", "Run");
        WebElement slider = browser.in(STEP, "input[type=range]");
        isGiven(slider, "slider", "Tank base above the floor");
        // The tree gives the bare number; with its unit it stands in the attribute that is read in its place.
        assertTrue(part(given(slider), "value").startsWith("2.2"), part(given(slider), "value"));
        assertEquals("2.20 m", slider.getDomAttribute("aria-valuetext"));
        assertEquals("−1.00 m to 3.50 m", part(given(slider), "description"));
        isGiven(browser.in(STEP, "figure svg"), "image", "Flow against tank height. Chart: ");
        isGiven(browser.in(STEP, ".drawn-frame"), "group", "Arrow keys read its values");
        isGiven(browser.in(STEP, ".printed"), "group", "Printed");
        isGiven(browser.in(STEP, ".result"), "group", "What move the tank came to");
        isGiven(browser.in("rise-that-counts", "input"), "textbox", "Your answer");
        isGiven(browser.step("rise-that-counts"), "region", "The height that counts");
        isGiven(browser.driver().findElement(By.id("loop-place")), "complementary", "Your loop");
        isGiven(browser.driver().findElement(By.tagName("main")), "main", "");
        assertEquals(1, browser.driver().findElements(By.tagName("h1")).size());
        WebElement choice = browser.driver().findElement(By.cssSelector("section.question input[type=radio]"));
        assertEquals("radio", part(given(choice), "role"));
        assertTrue(part(given(choice), "name").length() > 10, "a choice is read whole");
    }

    @Test
    void aRunIsSaidOnceAndWhole() {
        browser.run(STEP);
        browser.until("the chart", () -> times("Chart: Flow against tank height.") > 0);
        assertEquals(1, times("Chart: Flow against tank height."), heard().toString());
        assertEquals(1, times("The loop circulates: 1.87 litres a minute"), heard().toString());
        assertTrue(
                heard().stream()
                        .anyMatch(said -> said.contains("The loop circulates: 1.87")
                                && said.contains("Marked at 2.2: your tank.")),
                "printed and plot in one saying: " + heard());
    }

    @Test
    void aProblemIsSaidWithItsLine() {
        browser.type(STEP, "int a = 1;\nint b = oops;");
        listen();
        browser.run(STEP);
        browser.until("the line", () -> times("Line 2: ") > 0);
        assertEquals(1, times("Line 2: "), heard().toString());
    }

    @Test
    void aVerdictIsSaidOnceWithItsHint() {
        browser.answer("rise-that-counts", "99 m");
        browser.until("the verdict", () -> times("Not yet: 83 times the value.") > 0);
        browser.until("calm", () -> browser.in("rise-that-counts", ".reply").getDomAttribute("aria-busy") == null);
        assertEquals(1, times("Not yet: 83 times the value."), heard().toString());
        assertEquals(1, times("First find both levels above the floor"), heard().toString());
        WebElement field = browser.in("rise-that-counts", "input");
        assertEquals(field, browser.driver().switchTo().activeElement(), "the field keeps the focus for the next try");
    }

    @Test
    void aSliderIsSaidWhereItRestsAndAPlotWhereItIsRead() {
        browser.run(STEP);
        browser.until("the run", () -> times("Chart: Flow against tank height.") > 0);
        listen();
        WebElement slider = browser.in(STEP, "input[type=range]");
        slider.sendKeys(Keys.HOME, Keys.ARROW_RIGHT, Keys.HOME);
        browser.until("the danger", () -> times("does not circulate") > 0);
        assertEquals(1, times("does not circulate"), "at rest only, and once: " + heard());
        assertEquals("−1.00 m", slider.getDomAttribute("aria-valuetext"));
        assertEquals(
                0, heard().stream().filter(said -> said.equals("−1.00 m")).count(), "the slider itself says its value");
        listen();
        browser.in(STEP, ".drawn-frame").sendKeys(Keys.END);
        browser.until("the value", () -> times("Tank base above the floor 3.5") > 0);
        assertEquals(1, times("Tank base above the floor 3.5"), heard().toString());
    }

    @Test
    void aDecisionIsSaidWithWhatItDoesAndTheYearAfterIt() {
        browser.answer("tank-height", "2.6 m");
        browser.until("the decision", () -> times("It is in your design now.") > 0);
        browser.until("the year", () -> times("Starts and year are judged too: ") > 0);
        assertEquals(1, times("It is in your design now."), heard().toString());
        assertEquals(1, times("Starts and year are judged too: "), heard().toString());
    }
}
