package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The build sheet on the real page: looked at, turned into other units, kept as a file. */
@Tag("thorough")
class BuildSheetBrowserTest extends PrintedCourseCase {

    @Override
    protected Course course() {
        return TryCourse.read();
    }

    @BeforeEach
    void openSheet() {
        browser.driver().executeScript("localStorage.clear(); location.hash = '#/build-sheet'");
        untilShown();
    }

    private static void untilShown() {
        browser.until(
                "the sheet", () -> !all(".sheet-place:not([aria-busy]) iframe").isEmpty());
        inside(() -> browser.until("its text", () -> !all("h1").isEmpty()));
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    private static WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    /** Does something with the sheet's own document. */
    private static void inside(Runnable look) {
        browser.driver().switchTo().frame(one(".sheet-place iframe"));
        try {
            look.run();
        } finally {
            browser.driver().switchTo().defaultContent();
        }
    }

    private static String sheetText() {
        String[] text = new String[1];
        inside(() -> text[0] = one("main").getText());
        return text[0];
    }

    @Test
    void theSheetOfTheOwnDesignIsShownAndTellsFirstWhetherToBuild() {
        String text = sheetText();
        assertTrue(text.startsWith("Build sheet\nOrchard bothy"), text.substring(0, 80));
        assertTrue(text.indexOf("as drawn") < text.indexOf("What can hurt"), text.substring(0, 400));
        assertEquals("Build sheet · Loftcoil", browser.driver().getTitle());
        assertEquals(
                "page", browser.driver().findElement(By.linkText("Build sheet")).getDomAttribute("aria-current"));
        long frame = one(".sheet-place iframe").getSize().getHeight();
        assertTrue(frame > 2000, "the frame is as tall as the sheet, not " + frame);
        assertEquals(List.of(), browser.troubles());
    }

    /** Loftcoil's answers are those of a slow computer, so that there is time to press. */
    @Test
    void yearAndStartsSayHowFarTheyAreAndAreStoppedWithEscWhileHalfCanBeRead() {
        browser.driver()
                .executeScript(
                        """
                const real = window.fetch;
                let stopped = false;
                window.fetch = (address, more) => {
                  const path = String(address);
                  if (path.endsWith('/api/build-stop')) stopped = true;
                  if (!/api\\/build(-far|-stop)?$/.test(path)) return real(address, more);
                  const words = stopped ? 'Stopped.' : 'Working out fires lit after rests.';
                  return Promise.resolve(new Response(
                    JSON.stringify({ state: stopped ? 'stopped' : 'working', percent: 84, words }),
                    { headers: { 'Content-Type': 'application/json' } }));
                };
                location.hash = '#/words';
                """);
        browser.until("words", () -> !all("main:not([aria-busy]) dl.words").isEmpty());
        browser.driver().executeScript("location.hash = '#/build-sheet'");
        browser.until(
                "how far",
                () -> !all(".work-box progress").isEmpty()
                        && one(".work-box").getText().contains("fires lit after rests"));
        assertEquals("84", one(".work-box progress").getDomProperty("value"));
        browser.until(
                "half of it", () -> !all(".sheet-place iframe:not(.coming)").isEmpty());
        assertTrue(sheetText().contains("How it starts and how its year goes are not judged yet."), sheetText());
        assertEquals(List.of(), browser.accessibilityFaults());

        browser.press(Keys.ESCAPE);
        browser.until(
                "the stop",
                () -> all(".work-box").isEmpty()
                        && one(".build-sheet").getText().contains("Stopped. What stands below is half of the sheet"));
        assertTrue(sheetText().contains("Orchard bothy"));
        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void unitsChosenAreShownAndRememberedAndKept() {
        assertTrue(!sheetText().contains("°F"));
        new Select(one("#units-choice")).selectByValue("us");
        browser.until("US units", () -> sheetText().contains("°F"));
        new Select(one("#sheet-paper")).selectByValue("letter");
        browser.until("the link", () -> String.valueOf(one("a.button").getDomAttribute("href"))
                .equals("/sheet/pdf/letter"));

        browser.driver().executeScript("location.hash = '#/words'");
        browser.until("words", () -> !all("main:not([aria-busy]) dl.words").isEmpty());
        browser.driver().executeScript("location.hash = '#/build-sheet'");
        untilShown();

        assertEquals(
                "us", new Select(one("#units-choice")).getFirstSelectedOption().getDomAttribute("value"));
        Object kept = browser.driver()
                .executeAsyncScript(
                        """
                const done = arguments[arguments.length - 1];
                fetch(document.querySelector('a.button').href).then(async (answer) => {
                  const head = new TextDecoder().decode((await answer.arrayBuffer()).slice(0, 5));
                  done(`${answer.status} ${answer.headers.get('content-disposition')} ${head}`);
                }, (error) => done(String(error)));
                """);
        assertEquals("200 attachment; filename=\"build-sheet-orchard-bothy.pdf\" %PDF-", kept);
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void itIsReadableAtEachWidthLightAndDarkWithinAndWithout() {
        for (String scheme : List.of("light", "dark")) {
            browser.colours(scheme);
            for (int width : new int[] {1366, 360}) {
                browser.size(width, 800);
                String where = scheme + " at " + width;
                assertEquals(0, browser.overflow(), where);
                assertEquals(List.of(), browser.accessibilityFaults(), where);
                inside(() -> {
                    assertEquals(0, browser.overflow(), "sheet, " + where);
                });
            }
        }
    }
}
