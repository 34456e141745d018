package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.CourseApp;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests of a course on the real page, with real Java behind it and a fresh folder for each test. */
public abstract class LiveCourseCase extends BrowserCase {

    /** Where the learner's work is kept. */
    @TempDir
    protected Path folder;

    /** What the page serves. */
    protected CourseApp bench;

    private final List<Throwable> failures = new ArrayList<>();
    private PageServer server;

    /** The course to open. */
    protected abstract Course course();

    /** What prints on the page; nothing where a test does not need it. */
    protected BuildSheetPrinter press(CourseApp opened) {
        return BuildSheetPrinter.NONE;
    }

    @BeforeEach
    protected final void openCourse() throws Exception {
        bench = CourseApp.open(course(), ProgressFile.open(folder), SharedSession::lent, 5);
        server = PageServer.open(bench, new PageSetup(0, failures::add, press(bench)));
        browser.size(1366, 768);
        browser.colours("light");
        browser.open(server.address());
        // What an earlier test meant to have refused is not this one's trouble.
        browser.troubles();
    }

    @AfterEach
    protected final void closeCourse() {
        server.close();
        bench.close();
        assertEquals(List.of(), failures, "failures of the server");
    }

    /** Ends the program and starts it again on the same folder. */
    protected final void restart() throws Exception {
        closeCourse();
        openCourse();
    }

    /** Nothing overflows and no rule of accessibility is broken, on a laptop and on a phone, in light and in dark. */
    protected static void soundAtAllSizes(String what) {
        for (String scheme : List.of("light", "dark")) {
            browser.colours(scheme);
            for (int width : new int[] {1366, 360}) {
                browser.size(width, 800);
                assertEquals(0, browser.overflow(), what + " at " + width);
                assertEquals(List.of(), browser.accessibilityFaults(), what + " at " + width + ", " + scheme);
            }
        }
        browser.size(1366, 768);
        browser.colours("light");
    }
}
