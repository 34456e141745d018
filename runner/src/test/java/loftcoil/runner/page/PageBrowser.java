package loftcoil.runner.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.ElementClickInterceptedException;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A browser with the page open, and what a learner does in it. It does not care which bench is behind. */
public final class PageBrowser implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private final ChromeDriver driver;
    private final Path profile;

    private PageBrowser(ChromeDriver driver, Path profile) {
        this.driver = driver;
        this.profile = profile;
    }

    /** Starts a browser, or skips the test where there is none. */
    public static PageBrowser start() {
        Path profile = Path.of(System.getProperty("java.io.tmpdir"), "loftcoil-browser-" + UUID.randomUUID());
        return new PageBrowser(BrowserAvailable.start(profile), profile);
    }

    /** The browser itself. */
    public ChromeDriver driver() {
        return driver;
    }

    /** Opens the printed address and waits for the first lesson. */
    public void open(URI address) {
        driver.get("about:blank");
        driver.get(address.toString());
        waitForLesson();
    }

    /** Goes to a lesson, or to a step with {@code lesson/step}. */
    public void goTo(String place) {
        driver.executeScript("location.hash = '#/' + arguments[0]", place);
        String lesson = place.contains("/") ? place.substring(0, place.indexOf('/')) : place;
        until("lesson " + lesson, () -> !driver.findElements(
                        By.cssSelector("#lessons a[aria-current][href='#/" + lesson + "']"))
                .isEmpty());
        waitForLesson();
    }

    public void reload() {
        driver.navigate().refresh();
        waitForLesson();
    }

    public void waitForLesson() {
        until("the lesson", () -> !driver.findElements(By.cssSelector("main:not([aria-busy]) .onward"))
                .isEmpty());
        until("the loop", () -> !driver.findElements(By.cssSelector("#loop .safety"))
                .isEmpty());
    }

    public WebElement step(String id) {
        return driver.findElement(By.id("step-" + id));
    }

    public WebElement in(String step, String css) {
        return step(step).findElement(By.cssSelector(css));
    }

    public boolean has(String step, String css) {
        return !step(step).findElements(By.cssSelector(css)).isEmpty();
    }

    public String text(String step, String css) {
        return in(step, css).getText();
    }

    /** Presses Run and waits until it has come to an end. */
    public void run(String step) {
        click(in(step, ".sheet-foot .main"));
        waitForRun(step);
    }

    public void waitForRun(String step) {
        until(
                "the run of " + step,
                () -> has(step, ".result > *")
                        && in(step, ".sheet-foot .main").getDomAttribute("aria-disabled") == null);
    }

    /** Types an answer or chooses it, sends it, and waits for what is said. */
    public void answer(String step, String text) {
        driver.executeScript("arguments[0].querySelector('.reply').replaceChildren()", step(step));
        List<WebElement> typed = step(step).findElements(By.cssSelector(".typed input"));
        if (typed.isEmpty()) {
            click(in(step, "input[value='" + text + "']"));
            click(in(step, ".form-foot .main"));
        } else {
            typed.get(0).clear();
            typed.get(0).sendKeys(text, Keys.ENTER);
        }
        until("the reply to " + step, () -> has(step, ".reply > *"));
    }

    /** Sets what stands in an editor as if it had been typed. */
    public void type(String step, String source) {
        WebElement editor = in(step, ".CodeMirror");
        driver.executeScript(
                "const e = arguments[0].CodeMirror; e.setValue(''); e.replaceRange(arguments[1], {line: 0, ch: 0})",
                editor,
                source);
    }

    public String source(String step) {
        return String.valueOf(
                driver.executeScript("return arguments[0].CodeMirror.getValue()", in(step, ".CodeMirror")));
    }

    public void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    public void chord(Keys held, CharSequence key) {
        new Actions(driver).keyDown(held).sendKeys(key).keyUp(held).perform();
    }

    public void click(WebElement element) {
        // What an earlier act changed may still be moving things: the place is sought again until the click lands.
        until("the click", () -> {
            driver.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", element);
            try {
                element.click();
                return true;
            } catch (ElementClickInterceptedException moved) {
                return false;
            }
        });
    }

    /** Text of the focused element's label or content. */
    public String focused() {
        WebElement active = driver.switchTo().activeElement();
        return active.getTagName() + " " + active.getAccessibleName();
    }

    public void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    public void colours(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        "",
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", scheme),
                                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    }

    /** What the system asks of every page, by feature and value, such as {@code forced-colors} and {@code active}; on paper with {@code print}. */
    public void asked(String medium, Map<String, String> features) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        medium,
                        "features",
                        features.entrySet().stream()
                                .map(each -> Map.of("name", each.getKey(), "value", each.getValue()))
                                .toList()));
    }

    /** Errors the browser has noted since the last call: scripts that failed, files refused, rules broken. */
    public List<String> troubles() {
        return driver.manage().logs().get("browser").getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .filter(words -> !words.contains("/open/"))
                .toList();
    }

    /** How many pixels the page is wider than the window. */
    public long overflow() {
        return ((Number) driver.executeScript(
                        "return document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .longValue();
    }

    /** What axe-core finds against WCAG 2.x level A and AA, one line a finding. */
    public List<?> accessibilityFaults() {
        driver.executeScript(axe());
        Object found = ((JavascriptExecutor) driver)
                .executeAsyncScript(
                        """
                const done = arguments[arguments.length - 1];
                axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(
                  (result) => done(result.violations.flatMap((rule) => rule.nodes.map((node) =>
                    `${rule.id}: ${node.target} ${node.failureSummary}`))),
                  (error) => done([String(error)]));
                """);
        return (List<?>) found;
    }

    private static String axe() {
        try (InputStream in = PageBrowser.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    public void until(String what, java.util.function.BooleanSupplier holds) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage("waiting for " + what)
                .ignoring(StaleElementReferenceException.class)
                .until(each -> holds.getAsBoolean());
    }

    @Override
    public void close() {
        driver.quit();
        deleteProfile();
    }

    private void deleteProfile() {
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException leftOver) {
            // The browser may still be letting go of its files; the system clears its temporary folder.
        }
    }
}
