package loftcoil.runner.page;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * Finds a Chromium with its driver. Where there is none, the test is skipped and says so, unless the environment has
 * {@code LOFTCOIL_BROWSER=required}: then it fails.
 */
final class BrowserAvailable {

    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome");

    private BrowserAvailable() {}

    static ChromeDriver start(Path profile) {
        Optional<Path> browser =
                BROWSERS.stream().flatMap(name -> onPath(name).stream()).findFirst();
        Optional<Path> driver = onPath("chromedriver");
        if (browser.isEmpty() || driver.isEmpty()) {
            String words =
                    "No chromium with chromedriver on the PATH (Debian: apt install chromium chromium-driver), so the"
                            + " page was not tried in a browser.";
            if ("required".equals(System.getenv("LOFTCOIL_BROWSER"))) {
                throw new AssertionError(words + " LOFTCOIL_BROWSER=required asks for it.");
            }
            Assumptions.abort(words);
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.get().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile);
        options.setCapability("goog:loggingPrefs", java.util.Map.of("browser", "ALL"));
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.get().toFile())
                .build();
        return new ChromeDriver(service, options);
    }

    private static Optional<Path> onPath(String name) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(Pattern.quote(File.pathSeparator), -1))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
