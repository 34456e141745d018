package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.page.LiveCourseCase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The real course on the real page, with real Java behind it. */
class CourseBrowserTest extends LiveCourseCase {

    @Override
    protected Course course() {
        return CourseReader.builtIn();
    }

    @Tag("thorough")
    @Test
    void aSnippetDrawsAPlotAndTheWorkIsThereAfterARestart() throws Exception {
        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        assertTrue(browser.has("move-the-tank", "svg"));
        assertTrue(browser.text("move-the-tank", "figure").contains("Numbers"));

        browser.answer("rise-that-counts", "99 m");
        assertTrue(browser.text("rise-that-counts", "[aria-live]").contains("Not yet"));
        browser.answer("rise-that-counts", "2 L/min");
        assertTrue(browser.text("rise-that-counts", "[aria-live]").contains("volume flow"));

        browser.type("sunk-tank", "double mine = 41 + 1;");
        browser.run("sunk-tank");
        restart();
        browser.goTo("02-tank-above-coil");

        assertEquals("double mine = 41 + 1;", browser.source("sunk-tank"));
        assertTrue(
                browser.text("rise-that-counts", "[aria-live]").contains("volume flow"), "what was said is said again");
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void aPlotIsReadByKeysAWordOpensWhereItStandsAndLinesAreChosenWithoutTyping() {
        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        WebElement plot = browser.in("move-the-tank", ".drawn-frame");
        plot.sendKeys(Keys.END);
        assertTrue(
                browser.text("move-the-tank", ".readout")
                        .matches("Tank base above the floor 3.5.m: forward flow: \\d.*L/min"),
                browser.text("move-the-tank", ".readout"));
        plot.sendKeys(Keys.HOME);
        assertTrue(browser.text("move-the-tank", ".readout").contains("stands still or boils"));

        browser.until(
                "the terms",
                () -> !browser.driver().findElements(By.cssSelector(".term")).isEmpty());
        WebElement term = browser.driver().findElement(By.cssSelector(".term"));
        term.sendKeys(Keys.ENTER);
        assertEquals("true", term.getDomAttribute("aria-expanded"));
        assertEquals(List.of(), browser.accessibilityFaults());
        term.sendKeys(Keys.ESCAPE);
        assertTrue(browser.driver().findElements(By.cssSelector(".term-box")).isEmpty());

        browser.click(browser.driver().findElement(By.xpath("//button[starts-with(., 'Choose the lines')]")));
        for (String line : List.of("circuit(70)", "marginK() < 8")) {
            browser.click(
                    browser.step("lowest-tank").findElement(By.xpath(".//label[contains(., '" + line + "')]//input")));
        }
        browser.click(browser.in("lowest-tank", ".form-foot .main"));
        browser.until("the reply", () -> browser.has("lowest-tank", ".said-right"));
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void raisingTheTankByKeyboardRedrawsTheCurvesMark() {
        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        String before = browser.text("move-the-tank", ".printed");
        WebElement slider = browser.in("move-the-tank", "input[type=range]");

        slider.sendKeys(Keys.HOME);

        browser.until("the words follow the tank", () -> !browser.text("move-the-tank", ".printed")
                .equals(before));
        assertTrue(browser.text("move-the-tank", ".printed").contains("does not circulate"));
    }

    @Test
    void aDecisionReachesTheDrawingAndTheNextSnippet() {
        browser.goTo("02-tank-above-coil");
        String decision = CourseReader.builtIn().lesson("02-tank-above-coil").orElseThrow().steps().stream()
                .filter(loftcoil.runner.lesson.Step.Question.class::isInstance)
                .map(loftcoil.runner.lesson.Step::id)
                .reduce((first, second) -> second)
                .orElseThrow();

        browser.answer(decision, "2.6 m");
        browser.run("your-levels");

        assertTrue(browser.text("your-levels", ".printed").contains("3.26 m"), browser.text("your-levels", ".printed"));
        assertEquals(
                "2.60 m",
                bench.design().picture().rows().stream()
                        .filter(row -> row.get(0).equals("tank base"))
                        .map(row -> row.get(1))
                        .findFirst()
                        .orElseThrow());
    }

    @Tag("thorough")
    @Test
    void everyLessonIsReadableAtLaptopWidthAndFourTimesEnlarged() {
        for (String lesson :
                bench.course().lessons().stream().map(line -> line.id()).toList()) {
            for (int width : new int[] {1366, 320}) {
                browser.size(width, 800);
                browser.goTo(lesson);
                assertEquals(0, browser.overflow(), lesson + " at " + width);
                assertEquals(List.of(), browser.accessibilityFaults(), lesson + " at " + width);
            }
        }
        browser.size(1366, 768);
    }
}
