package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Every kind of page as people have it set: much enlarged, without motion, in the system's own colours, on paper, by keyboard. */
@Tag("thorough")
class EachViewBrowserTest extends PrintedCourseCase {

    /** Each page by its address, and what stands on it when it is there. */
    private static final Map<String, String> PLACES = places();

    @Override
    protected Course course() {
        return CourseReader.builtIn();
    }

    private static Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        places.put("house", ".station");
        places.put("designs", ".card");
        places.put("rebuild", ".rebuild .pair");
        places.put("refresher", "button.main");
        places.put("words", "dl.words");
        places.put("search", "#search-for");
        places.put("emergency", ".conduct");
        places.put("build-sheet", ".sheet-place:not([aria-busy]) iframe");
        return places;
    }

    @BeforeEach
    void unitsAreChosen() {
        bench.choose(Units.METRIC);
        browser.reload();
    }

    private static void go(String place) {
        browser.driver().executeScript("location.hash = '#/' + arguments[0]", place);
        browser.until(
                place, () -> !all("main:not([aria-busy]) " + PLACES.get(place)).isEmpty());
        browser.driver()
                .executeScript("document.querySelectorAll('main details').forEach((fold) => { fold.open = true; })");
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    /** A lesson in which something has run and something was answered, then each other page. */
    private void onEach(java.util.function.Consumer<String> look) {
        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        browser.answer("rise-that-counts", "99 m");
        look.accept("lesson 2");
        for (String place : PLACES.keySet()) {
            go(place);
            look.accept(place);
        }
    }

    /** WCAG 2.2, 1.4.10: a window of 1280 by 1024 pixels, four times enlarged. */
    @Test
    void fourTimesEnlargedOnlyTablesPlotsAndDrawingsMoveSideways() {
        browser.size(320, 256);
        onEach(place -> {
            assertEquals(0, browser.overflow(), place);
            assertEquals(
                    List.of(),
                    browser.driver()
                            .executeScript(
                                    """
                    const shown = (each) => each.checkVisibility() && each.getBoundingClientRect().width > 0;
                    const allowed = '.table-frame, .drawn-frame, pre, .CodeMirror-scroll, input, select';
                    const sideways = [...document.querySelectorAll('body *')].filter((each) => shown(each)
                      && each.scrollWidth > each.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(each).overflowX) && !each.matches(allowed));
                    const covers = [...document.querySelectorAll('body *')].filter((each) => shown(each)
                      && /sticky|fixed/.test(getComputedStyle(each).position) && each.getBoundingClientRect().height > innerHeight / 4
                      && !each.matches('dialog') && !each.closest('.table-frame'));
                    return [...sideways.map((each) => 'moves sideways: ' + each.className), ...covers.map((each) => 'covers: ' + each.className)];
                    """),
                    place);
        });
    }

    /** Letters of plots and drawings can be read on a phone, and where all is four times enlarged. */
    @Test
    void noLettersOfPlotsAndDrawingsAreSmallerThanTwelvePixels() {
        for (int width : new int[] {320, 390}) {
            browser.size(width, 844);
            onEach(place -> assertEquals(
                    List.of(),
                    browser.driver()
                            .executeScript(
                                    """
                    const size = (each) => parseFloat(getComputedStyle(each).fontSize) * each.getScreenCTM().a;
                    return [...document.querySelectorAll('svg text')].filter((each) => each.checkVisibility() && size(each) < 11.95)
                      .map((each) => `${each.closest('svg').getAttribute('class')}: ${each.textContent} ${size(each).toFixed(1)} px`);
                    """),
                    place + " at " + width));
        }
    }

    @Test
    void whoWantsNoMotionSeesNoneAndWhoDoesCanHoldIt() {
        browser.goTo("02-tank-above-coil");
        browser.driver().findElement(By.id("step-move-the-tank"));
        WebElement slider = browser.in("move-the-tank", "input[type=range]");
        slider.sendKeys(Keys.ARROW_RIGHT);
        assertEquals(0L, moving(), "asked for no motion");
        assertEquals(
                "auto",
                browser.driver().executeScript("return getComputedStyle(document.documentElement).scrollBehavior"));

        browser.asked("", Map.of("prefers-reduced-motion", "no-preference"));
        browser.reload();
        assertTrue(moving() > 0, "water moves where nobody minds");
        browser.click(browser.driver().findElement(By.xpath("//button[.='Hold the water still']")));
        assertEquals(0L, moving());
        browser.reload();
        assertEquals(0L, moving(), "after a reload too");
        browser.click(browser.driver().findElement(By.xpath("//button[.='Let the water move']")));
        assertTrue(moving() > 0);
    }

    /** Animations and transitions that run. */
    private static long moving() {
        return ((Number)
                        browser.driver()
                                .executeScript(
                                        "return document.getAnimations().filter((each) => each.playState === 'running').length"))
                .longValue();
    }

    @Test
    void inTheSystemsOwnColoursNothingIsLost() {
        for (String scheme : List.of("light", "dark")) {
            browser.asked(
                    "",
                    Map.of(
                            "forced-colors",
                            "active",
                            "prefers-color-scheme",
                            scheme,
                            "prefers-reduced-motion",
                            "reduce"));
            onEach(place -> assertEquals(
                    List.of(),
                    browser.driver()
                            .executeScript(
                                    """
                    const part = (value) => { const c = value / 255; return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; };
                    const light = (css) => { const [r, g, b] = css.match(/[\\d.]+/g).map(Number); return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b); };
                    const contrast = (one, other) => { const [a, b] = [light(one), light(other)].sort((x, y) => y - x); return (a + 0.05) / (b + 0.05); };
                    const probe = document.createElement('p');
                    probe.style.backgroundColor = 'Canvas';
                    document.body.append(probe);
                    const ground = getComputedStyle(probe).backgroundColor;
                    probe.remove();
                    const faults = [];
                    const need = (each, what, css, least) => { if (contrast(css, ground) < least) faults.push(`${what} ${each.getAttribute('class')}: ${css}`); };
                    const shown = (css) => [...document.querySelectorAll(css)].filter((each) => each.checkVisibility());
                    for (const each of shown('.lc-chart polyline, .lc-chart path[class*=curve], .lc-house path[class*=stroke], .sign')) {
                      const stroke = getComputedStyle(each).stroke;
                      if (/^rgb/.test(stroke) && !/lc-grid|lc-flow|lc-ghost|lc-lagged/.test(each.getAttribute('class') || '')) need(each, 'stroke', stroke, 3);
                    }
                    for (const each of shown('svg text')) need(each, 'letters', getComputedStyle(each).fill, 4.5);
                    for (const each of shown('.said, .warning, .guesses, .card, button:not(.link):not(.term), main input, main select')) {
                      const box = getComputedStyle(each);
                      if (each.matches('input') && each.parentElement.matches('.typed-line')) continue;
                      if (!/radio|checkbox|range|file/.test(each.type || '') && (parseFloat(box.borderTopWidth) < 1 || box.borderTopStyle === 'none')) faults.push('no border: ' + each.className);
                    }
                    const chosen = document.querySelector('#views a[aria-current]');
                    const other = document.querySelector('#views a:not([aria-current])');
                    if (chosen && getComputedStyle(chosen).borderBottomColor === getComputedStyle(other).borderBottomColor) faults.push('the chosen place looks like the others');
                    return [...new Set(faults)];
                    """),
                    place + ", " + scheme));
        }
    }

    @Test
    void onPaperADangerIsTheBlackestAndTheSheetPrintsItself() {
        go("emergency");
        browser.asked("print", Map.of());
        for (WebElement danger : all(".warning.danger p, .warning.danger h2")) {
            assertEquals("rgba(0, 0, 0, 1)", danger.getCssValue("color"), danger.getText());
        }
        assertFalse(all(".top, .lessons, .loop").stream().anyMatch(WebElement::isDisplayed), "the lesson alone");
        browser.colours("light");
        go("build-sheet");
        browser.driver()
                .executeScript(
                        "window.printed = 0; document.querySelector('.sheet-place iframe').contentWindow.print = () => { window.printed += 1; };");
        assertEquals(
                1,
                browser.driver()
                        .findElements(By.xpath("//main//button[.='Print the sheet']"))
                        .size());
        browser.click(browser.driver().findElement(By.xpath("//main//button[.='Print the sheet']")));
        browser.driver().switchTo().defaultContent();
        browser.driver().executeScript("document.querySelector('main h1').focus()");
        browser.chord(Keys.CONTROL, "p");
        assertEquals(2L, browser.driver().executeScript("return window.printed"));
    }

    @Test
    void whatIsTakenAwayOrDoneWithGivesTheFocusToWhatStandsNextToIt() {
        go("house");
        enter("[id='row-site-latitudeDeg'] .agree");
        browser.until("kept", () -> browser.driver()
                .findElement(By.cssSelector("#row-site-latitudeDeg .origin"))
                .getText()
                .equals("yours"));
        focusStays("It is so");
        enter("#station-taps .walked-line:nth-child(2) .take-out");
        focusStays("taking out the second line");
        assertEquals(
                true,
                browser.driver()
                        .executeScript(
                                "return document.activeElement.matches('#station-taps .walked-line:nth-child(2) input')"),
                "the one that moved up: " + browser.focused());
        enter("#station-panes button");
        browser.until("no panes", () -> browser.driver()
                .findElement(By.id("station-panes"))
                .getText()
                .contains("no"));
        focusStays("no glass");

        browser.goTo("02-tank-above-coil");
        browser.answer("tank-height", "2.6 m");
        go("designs");
        enter("#history-undo");
        browser.until(
                "undone",
                () -> !browser.driver().findElement(By.id("history-undo")).isEnabled());
        focusStays("Undo");
    }

    @Test
    void aRefusedFieldSaysSoItselfAndALandmarkHasANameOfItsOwn() {
        go("rebuild");
        WebElement field = browser.driver().findElement(By.id("lever-tank-baseM"));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "99");
        browser.until("the refusal", () -> "true".equals(field.getDomAttribute("aria-invalid")));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "2.3");
        browser.until("no refusal", () -> field.getDomAttribute("aria-invalid") == null);
        onEach(place -> assertEquals(
                List.of(),
                browser.driver()
                        .executeScript(
                                """
                const named = [...document.querySelectorAll('[role=region], section[aria-label], section[aria-labelledby], nav, aside')]
                  .filter((each) => each.checkVisibility())
                  .map((each) => each.getAttribute('aria-label') || document.getElementById(each.getAttribute('aria-labelledby'))?.textContent);
                return named.filter((name, at) => named.indexOf(name) !== at);
                """),
                place));
    }

    /** Without scripts the page can do nothing; it has to say so where it is seen. */
    @Test
    void withoutScriptsThatIsSaidInSight() {
        browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            for (int[] size : new int[][] {{1280, 800}, {390, 844}}) {
                browser.size(size[0], size[1]);
                browser.driver().navigate().refresh();
                WebElement words = browser.driver().findElement(By.cssSelector("noscript p"));
                assertTrue(words.isDisplayed(), words.getText());
                assertTrue(
                        words.getRect().getY() + words.getRect().getHeight() < size[1],
                        words.getRect().getY() + " of " + size[1]);
            }
        } finally {
            browser.driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    private static void enter(String css) {
        WebElement button = browser.driver().findElement(By.cssSelector(css));
        browser.driver().executeScript("arguments[0].focus()", button);
        browser.press(Keys.ENTER);
    }

    private static void focusStays(String after) {
        browser.until(
                "a focus after " + after,
                () -> Boolean.TRUE.equals(
                        browser.driver()
                                .executeScript(
                                        "const now = document.activeElement; return now !== document.body && now.isConnected && now.checkVisibility() && !now.disabled && Boolean(now.closest('main'))")));
    }
}
