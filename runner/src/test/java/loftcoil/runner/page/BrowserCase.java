package loftcoil.runner.page;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Tests in one real browser, started once for all tests of a class. */
public abstract class BrowserCase {

    /** The browser; tests of a class share it one after the other. */
    protected static PageBrowser browser;

    @BeforeAll
    static void startBrowser() {
        browser = PageBrowser.start();
    }

    @AfterAll
    static void quitBrowser() {
        if (browser != null) {
            browser.close();
        }
    }
}
