package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.course.Course;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;

/** While starts and year are being worked out each part of the page says so, and none looks safe; then it is filled in. */
@Tag("thorough")
class NotJudgedYetBrowserTest extends PrintedCourseCase {

    private static final String OPEN = "How it starts and how its year goes are not judged yet.";

    /** What would tell somebody that nothing is wrong. */
    private static final Pattern CALM =
            Pattern.compile("No danger known|Nothing found, much|That is no promise|no danger is known");

    /** The whole verdict, an effect with its year and a build sheet come no sooner than they are let through, as on a slow computer. */
    private static final String HOLD =
            """
            if (!window.through) {
              const real = window.fetch;
              const held = new Promise((through) => { window.through = through; });
              window.fetch = async (address, more) => {
                if (/\\/api\\/(safety|effect|build-far)$/.test(String(address))) await held;
                return real(address, more);
              };
            }
            """;

    /** The bothy with a sound coil: only starts and year show what is wrong with it. */
    private static final Design SOUND_AT_FIRST = Changes.apply(
                    Changes.apply(Example.orchardBothy(), "coil.turns", "bent from one length"),
                    "coil.tube",
                    "EN1057 22x1.2")
            .withCoilHeatKW(1);

    @Override
    protected Course course() {
        return TryCourse.read();
    }

    @BeforeEach
    void hold() {
        bench.designs().open(DesignJson.write(SOUND_AT_FIRST), "sound at first");
        browser.driver().executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", HOLD));
        browser.reload();
    }

    private static void letThrough() {
        browser.driver().executeScript("window.through()");
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    private static void shot(String name) {
        String to = System.getProperty("loftcoil.shots", "");
        if (!to.isEmpty()) {
            try {
                Files.write(Path.of(to, name + ".png"), browser.driver().getScreenshotAs(OutputType.BYTES));
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static void shots(String name) {
        for (String scheme : List.of("light", "dark")) {
            browser.colours(scheme);
            browser.size(1280, 800);
            shot(name + "-laptop-" + scheme);
            browser.size(390, 844);
            shot(name + "-phone-" + scheme);
        }
        browser.size(1366, 768);
        browser.colours("light");
    }

    /** It says what is open and nothing calm. */
    private static void isOpen(String where, String text) {
        assertTrue(text.contains(OPEN), where + ": " + text);
        assertFalse(CALM.matcher(text).find(), where + ": " + text);
    }

    private static void untilJudged(String css) {
        browser.until("the whole verdict in " + css, () -> !one(css).getText().contains("not judged yet"));
    }

    @Test
    void thePanelSaysNotJudgedYetAndThenWhatItComesTo() {
        isOpen("panel", one("#loop").getText());
        assertEquals("Not judged yet", one("#loop .safety .warning-word").getText());
        assertEquals(List.of(), all("#loop .safety .sign-right"), "no sign that all is well");
        assertEquals("Orchard bothy: Not judged yet", one("#loop-brief").getText());
        assertTrue(one("#loop").getText().contains("least distance from boiling, worst so far"));
        assertTrue(one("#loop .circulates").getText().startsWith("With the whole tank at 40"));
        soundAtAllSizes("a panel not judged yet");
        shots("panel-open");

        letThrough();
        untilJudged("#loop .safety");
        assertEquals("Danger", one("#loop .safety .warning-word").getText());
        assertEquals("Orchard bothy: Danger", one("#loop-brief").getText());
        shots("panel-judged");
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void aDecisionsAnswerSaysNotJudgedYetAndThenWhatItComesTo() {
        browser.answer("tank", "1.9 m");
        browser.until("the reply", () -> browser.has("tank", ".said .safety"));
        isOpen("reply", browser.text("tank", ".said"));
        assertEquals("Not judged yet", browser.text("tank", ".said .warning-word"));
        assertTrue(browser.text("tank", ".effect-lines").contains("worst so far"));
        soundAtAllSizes("a reply not judged yet");
        shots("reply-open");

        letThrough();
        untilJudged("#step-tank .said");
        browser.until("what the year adds", () -> browser.text("tank", ".said").contains("With starts and year: "));
        assertEquals("Danger", browser.text("tank", ".said .warning-word"));
        assertFalse(browser.text("tank", ".effect-lines").contains("so far"));
        shots("reply-judged");

        browser.goTo("02-more");
        browser.goTo("01-try");
        assertEquals("Danger", browser.text("tank", ".said .warning-word"), "what is known is told at once");
        assertEquals(List.of(), browser.troubles());
    }

    /** An answer is of the design as it is now, not of that of an earlier decision. */
    @Test
    void anAnswerThatStandsThereFollowsTheDesign() {
        browser.answer("tank", "1.9 m");
        letThrough();
        untilJudged("#step-tank .said");
        bench.designs().open(DesignJson.write(SOUND_AT_FIRST.withTankBaseM(-1)), "a tank too low");
        browser.driver().executeScript("document.querySelector('#units-choice').dispatchEvent(new Event('change'))");
        browser.until("the tank too low", () -> browser.text("tank", ".said .safety")
                .contains("Hot water does not go down by itself"));
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void halfOfABuildSheetSaysNotJudgedYetAndIsNotForCutting() {
        browser.driver().executeScript("location.hash = '#/build-sheet'");
        browser.until(
                "half of it", () -> !all(".sheet-place iframe:not(.coming)").isEmpty());
        String half = sheet();
        isOpen("half of the build sheet", half);
        assertTrue(half.contains("Half of the sheet, not for cutting"), half.substring(0, 600));
        shots("sheet-open");

        letThrough();
        browser.until(
                "the whole of it",
                () -> !all(".sheet-place:not([aria-busy]) iframe:not(.coming)").isEmpty()
                        && !sheet().contains("not judged yet"));
        assertTrue(sheet().contains("Do not build this as drawn"), sheet().substring(0, 600));
        assertEquals(List.of(), browser.troubles());
    }

    private static String sheet() {
        browser.driver().switchTo().frame(one(".sheet-place iframe:not(.coming)"));
        try {
            return one("main").getText();
        } finally {
            browser.driver().switchTo().defaultContent();
        }
    }

    @Test
    void aRebuildSaysNotJudgedYetUntilTheYearIsMarched() {
        browser.driver().executeScript("location.hash = '#/rebuild'");
        browser.until("before and after", () -> !all(".result-place:not([aria-busy]) .safety")
                .isEmpty());
        isOpen("rebuild", one(".result-place").getText());
        assertEquals("Not judged yet", one(".result-place .warning-word").getText());
        shots("rebuild-open");

        browser.click(browser.driver().findElement(By.xpath("//button[.='March the year too']")));
        untilJudged(".result-place .safety");
        assertEquals("Danger", one(".result-place .warning-word").getText());
        assertEquals(List.of(), browser.troubles());
    }
}
