package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.runner.course.Course;
import loftcoil.runner.page.LiveCourseCase;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Several designs and their history on the page, by typing and clicking alone. */
@Tag("thorough")
class DesignsBrowserTest extends LiveCourseCase {

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

    private static void press(String id) {
        browser.until(id, () -> !all("#" + id + ":enabled").isEmpty());
        browser.click(one("#" + id));
    }

    private static void open() {
        browser.driver().executeScript("location.hash = '#/designs'");
        browser.until(
                "the designs", () -> !all("main:not([aria-busy]) .card.own").isEmpty());
    }

    @Test
    void aHistoryIsWalkedAndAnotherDesignIsBegunNamedAndRemoved() {
        bench.rebuild().takeOver(bench.rebuild().own().json(), Map.of("tank.baseM", "2.6"));
        open();
        until("rebuild taken over");
        soundAtAllSizes("a history");

        one("#history-undo").sendKeys(Keys.ENTER);
        until("Taken back: ");
        until("taken back");
        press("history-redo");
        until("Made again: ");
        press("moment-0");
        until("Your design is as it was then.");
        assertTrue(bench.rebuild().own().json().contains("\"baseM\" : 2.2"));

        one("#begin-name").sendKeys("Hut two");
        press("begin-go");
        until("“Hut two” is taken up.");
        browser.driver()
                .executeScript("document.querySelectorAll('.naming').forEach((fold) => { fold.open = true; });");
        one("#name-own").sendKeys("Hut three");
        press("name-own-copy");
        until("The copy “Hut three” lies on the shelf");
        press("card-hut-three-away");
        until("It is removed.");
        soundAtAllSizes("one removed");
        browser.driver()
                .executeScript("document.querySelectorAll('details.card').forEach((fold) => { fold.open = true; });");
        press("back-hut-three");
        until("It lies on the shelf again.");
        press("card-orchard-bothy-up");
        until("“Orchard bothy” is taken up.");
        assertEquals("Orchard bothy", bench.design().name());
        press("own-save");
        until("Saved as orchard-bothy.json");
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void aDecisionShowsItsFiguresBeforeAndAfterAndItsDanger() {
        browser.driver().executeScript("location.hash = '#/01-try/tank'");
        browser.until("the decision", () -> !all("#step-tank input[type=text]").isEmpty());
        WebElement field = one("#step-tank input[type=text]");
        field.clear();
        field.sendKeys("-1 m", Keys.ENTER);
        until("This is dangerous");
        browser.until("the year", () -> one("#step-tank").getText().contains("hottest water in the tank"));
        assertTrue(
                one("#step-tank").getText().contains("With it moved:"),
                one("#step-tank").getText());
        soundAtAllSizes("a decision");
        assertEquals(List.of(), browser.troubles());
    }
}
