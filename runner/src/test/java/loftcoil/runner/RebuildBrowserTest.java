package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.course.Course;
import loftcoil.runner.page.LiveCourseCase;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Refresher and rebuild on the page: what who comes back after years does there. */
@Tag("thorough")
class RebuildBrowserTest extends LiveCourseCase {

    @Override
    protected Course course() {
        return TryCourse.read();
    }

    private void view(String name, String wanted) {
        browser.driver().executeScript("location.hash = '#/' + arguments[0]", name);
        browser.until(name, () -> !all("main:not([aria-busy]) " + wanted).isEmpty());
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    private static void press(String words) {
        browser.click(all("main button").stream()
                .filter(button -> button.isDisplayed() && button.getText().equals(words))
                .findFirst()
                .orElseThrow());
    }

    private static void until(String words) {
        browser.until(words, () -> one("main").getText().contains(words));
    }

    @Test
    void theRefresherFindsWhatHasFadedAndOpensOnlyThat() {
        view("refresher", ".refresher button");
        soundAtAllSizes("the start");
        press("Begin");
        until("Question 1 of 3");
        one("#refresher-answer").sendKeys("1 Pa", Keys.ENTER);
        until("Source:");
        soundAtAllSizes("a missed question");
        press("Go on");
        until("Question 2 of 3");
        browser.click(one("input[value='up']"));
        press("Answer");
        until("It floats.");
        press("Go on");
        until("Question 3 of 3");
        press("I do not remember");
        until("Then read how it goes.");
        press("Go on");
        until("One lesson has faded.");
        soundAtAllSizes("what was found");

        assertEquals("A first try", one(".faded a").getText());
        assertTrue(
                one("#lessons").getText().contains("faded: read again"),
                one("#lessons").getText());
        browser.click(one(".faded a"));
        browser.waitForLesson();
        assertTrue(one("main h1").getText().contains("A first try"));

        view("refresher", ".faded");
        press("Begin the refresher anew");
        until("quick questions");
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void aLeverMovesTheFiguresAndTheNewDesignIsTakenOver() {
        view("rebuild", ".pair");
        browser.click(one(".part summary"));
        soundAtAllSizes("nothing changed");
        WebElement base = one("#lever-tank-baseM");
        base.clear();
        base.sendKeys("2.6");
        until("Tank base above the floor: 2.6 m");
        browser.until("better", () -> !all(".turn-better").isEmpty());
        soundAtAllSizes("one change");

        press("March the year too");
        browser.until("the year", () -> all(".figures summary").stream()
                .anyMatch(summary -> summary.getText().startsWith("Year ")));
        soundAtAllSizes("the year");

        press("Take it over as my design");
        until("design-before-");
        browser.until(
                "the loop follows",
                () -> one("#loop").getText().contains("1.94 litres a minute")
                        && bench.design().picture().rows().stream()
                                .anyMatch(row -> row.get(1).equals("2.60 m")));
        assertEquals(1, bench.rebuild().own().kept().size());
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void whatCannotBeBuiltSaysWhyAndTheLeverGoesBack() {
        view("rebuild", ".pair");
        browser.click(one(".part summary"));
        WebElement base = one("#lever-tank-baseM");
        base.clear();
        base.sendKeys("99");
        browser.until(
                "the refusal",
                () -> one("[role=alert]:not(.banner)").getText().contains("Tank base above the floor: 99; allowed:"));
        assertFalse(one("main").getText().contains("tank.baseM"), "a name of a file says nothing here");
        assertEquals("true", one("#lever-tank-baseM").getDomAttribute("aria-invalid"));
        soundAtAllSizes("a refusal");
        press("Put all back");
        browser.until("before and after", () -> !all(".pair").isEmpty());
        assertEquals("2.2", one("#lever-tank-baseM").getAttribute("value"));
    }

    @Test
    void anOldDesignIsReadFromAFileByThePageItself() throws Exception {
        Path old = folder.resolve("from-a-stick.json");
        Files.writeString(old, DesignJson.write(Example.orchardBothy().withTankBaseM(1.9)));
        view("rebuild", ".pair");
        browser.click(one(".chooser summary"));
        one("#rebuild-file").sendKeys(old.toString());
        until("(from-a-stick.json)");
        assertEquals("1.9", one("#lever-tank-baseM").getAttribute("value"));
        soundAtAllSizes("an old file");

        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"name\": 3}");
        one("#rebuild-file").sendKeys(broken.toString());
        browser.until(
                "the refusal", () -> one("[role=alert]:not(.banner)").getText().contains("That is no design"));
        assertTrue(one("main").getText().contains("(from-a-stick.json)"));
    }
}
