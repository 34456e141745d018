package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.CourseApp;
import loftcoil.runner.show.View;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The course and the survey before a screen of 60 columns and 20 rows: nothing is cut and nothing scrolls past unread. */
class SmallScreenTest {

    private static final int COLUMNS = 60;
    private static final int ROWS = 20;

    @TempDir
    private Path folder;

    @Tag("thorough")
    @Test
    void allOfLessonTwoIsReadOnASmallScreen() {
        try (CourseApp bench =
                CourseApp.open(CourseReader.builtIn(), ProgressFile.open(folder), SharedSession::lent, 7)) {
            bench.choose(Units.METRIC);
            List<String> typed = new ArrayList<>(List.of("?", "d", "!", "t", "drive", "w", "2"));
            for (View.Step step : bench.lesson("02-tank-above-coil").steps()) {
                if (step instanceof View.Question question
                        && !question.options().isEmpty()) {
                    typed.add("1");
                } else if (step instanceof View.Question) {
                    // Wrong until the worked solution is shown.
                    typed.addAll(List.of("99", "1", "1"));
                }
                typed.add("");
            }
            // Enter does not go on past a run that failed, so there may be one too many.
            typed.addAll(List.of("", "", "o", "", "q", "q"));
            ScriptedConsole console = ScriptedConsole.on(COLUMNS, ROWS, typed);
            new TerminalFace(bench, TerminalFaceTest::written, console).walk();

            assertTrue(console.all().contains("The end of this lesson."), "the whole lesson was walked");
            console.assertAllReadable();
        }
    }
}
