package loftcoil.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import loftcoil.runner.cli.Starter;
import loftcoil.runner.page.PageBrowser;

/**
 * Measures, in a real browser that is open already, how long it takes from the start command to the first lesson on the
 * screen, and from moving the slider to the new drawing on the screen.
 */
final class PageBench {

    private static final int STARTS = 7;
    private static final int DRAGS = 80;
    private static final int WARM_DRAGS = 20;

    /** The whole text of a lesson stands on the page. */
    private static final String READABLE = "return document.querySelector('main .onward') !== null";

    /** Moves the slider by one stop and comes back when the drawing has been replaced, with the milliseconds between. */
    private static final String DRAG =
            """
            const [step, value, done] = arguments;
            const slider = step.querySelector('input[type=range]');
            const figure = step.querySelector('.result');
            const began = performance.now();
            const watch = new MutationObserver(() => {
              watch.disconnect();
              requestAnimationFrame(() => done(performance.now() - began));
            });
            watch.observe(figure, {subtree: true, childList: true, attributes: true, characterData: true});
            slider.value = value;
            slider.dispatchEvent(new Event('input', {bubbles: true}));
            """;

    private PageBench() {}

    static void run() throws IOException, InterruptedException {
        Times readable = new Times("start command to first lesson readable");
        Times first = new Times("start command to lesson, list and loop");
        PageBrowser browser = PageBrowser.start();
        try {
            for (int i = 0; i < STARTS; i++) {
                boolean last = i == STARTS - 1;
                long began = System.nanoTime();
                Process loftcoil = Starter.start(Files.createTempDirectory("loftcoil-bench"));
                try {
                    browser.driver().get(Starter.address(loftcoil).toString());
                    while (!Boolean.TRUE.equals(browser.driver().executeScript(READABLE))) {
                        Thread.onSpinWait();
                    }
                    readable.add((System.nanoTime() - began) / 1e6);
                    browser.waitForLesson();
                    first.add((System.nanoTime() - began) / 1e6);
                    if (last) {
                        System.out.println(readable);
                        System.out.println(first);
                        System.out.println(drag(browser));
                    }
                } finally {
                    Starter.end(loftcoil);
                }
            }
        } finally {
            browser.close();
        }
    }

    private static Times drag(PageBrowser browser) {
        browser.goTo("02-tank-above-coil");
        browser.run("move-the-tank");
        browser.driver().manage().timeouts().scriptTimeout(Duration.ofSeconds(20));
        Times redraws = new Times("slider moved to drawing replaced");
        for (int i = 0; i < WARM_DRAGS + DRAGS; i++) {
            double value = 1 + 0.05 * (i % 40);
            Object millis = browser.driver().executeAsyncScript(DRAG, browser.step("move-the-tank"), "" + value);
            if (i >= WARM_DRAGS) {
                redraws.add(((Number) millis).doubleValue());
            }
        }
        return redraws;
    }
}
