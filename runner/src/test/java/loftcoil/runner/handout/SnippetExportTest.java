package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.study.ProgressListener;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.session.SnippetClassPath;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each exported file, run by the JDK's own shell in a process of its own, says and draws what the lesson does. */
class SnippetExportTest {

    private static final int LONGEST_MINUTES = 20;
    private static final String SAID = "said.txt";

    @TempDir
    private static Path folder;

    private static final Course COURSE = CourseReader.builtIn();

    /** The lesson that every run tries, with a dragged value, prints and plots; the rest is for the thorough one. */
    private static final String USUAL = "17-first-fire-and-after";

    @TestFactory
    Stream<DynamicTest> oneFileRunsInTheShellOfTheJdk() {
        return tests(List.of(COURSE.lesson(USUAL).orElseThrow()));
    }

    @Tag("thorough")
    @TestFactory
    Stream<DynamicTest> theOtherFilesRunInTheShellOfTheJdk() {
        return tests(COURSE.lessons().stream()
                .filter(lesson -> !lesson.id().equals(USUAL))
                .toList());
    }

    private static Stream<DynamicTest> tests(List<Lesson> lessons) {
        Map<String, String> files = SnippetExport.of(COURSE);
        assertEquals(COURSE.lessons().size(), files.size());
        return lessons.stream()
                .map(lesson ->
                        DynamicTest.dynamicTest(lesson.id(), () -> runs(lesson, files.get(lesson.id() + ".jsh"))));
    }

    private static void runs(Lesson lesson, String text) throws IOException, InterruptedException {
        Path place = Files.createDirectory(folder.resolve(lesson.id()));
        Path file = Files.writeString(place.resolve(lesson.id() + ".jsh"), text);

        Process shell = shell(place, file);
        Ran ran = ran(lesson);
        String said = said(shell, place);

        assertFalse(said.contains("Error:") || said.contains("xception"), said);
        List<String> lines = said.lines()
                .filter(line -> !line.startsWith("Plot \""))
                .map(String::strip)
                .toList();
        for (String line : ran.printed()) {
            assertTrue(lines.contains(line), "the shell did not print: " + line + "\nbut:\n" + said);
        }
        long drawn = said.lines().filter(line -> line.startsWith("Plot \"")).count();
        assertEquals(ran.charts(), drawn, said);
        for (String line :
                said.lines().filter(line -> line.startsWith("Plot \"")).toList()) {
            Path svg = Path.of(line.replaceFirst(".* is drawn in ", ""));
            assertTrue(Files.readString(svg).contains("<svg"), line);
        }
    }

    private static Process shell(Path place, Path file) throws IOException {
        String classPath = SnippetClassPath.find().stream()
                .map(Path::toString)
                .collect(Collectors.joining(java.io.File.pathSeparator));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "jshell").toString(),
                "-J-XX:TieredStopAtLevel=1",
                "-R-XX:TieredStopAtLevel=1",
                "-J-Dfile.encoding=UTF-8",
                "-R-Dfile.encoding=UTF-8",
                "--class-path",
                classPath,
                "-s",
                file.toString()));
        Process process = new ProcessBuilder(command)
                .directory(place.toFile())
                .redirectErrorStream(true)
                .redirectOutput(place.resolve(SAID).toFile())
                .start();
        process.getOutputStream().close();
        return process;
    }

    private static String said(Process shell, Path place) throws IOException, InterruptedException {
        boolean ended = shell.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES);
        shell.destroyForcibly();
        assertTrue(ended, "the shell did not end");
        return Files.readString(place.resolve(SAID), StandardCharsets.UTF_8);
    }

    private record Ran(List<String> printed, int charts) {}

    private static Ran ran(Lesson lesson) {
        List<String> printed = new ArrayList<>();
        int charts = 0;
        try (Session session = SharedSession.lent()) {
            DesignBinding.bind(session, DesignJson.write(Example.orchardBothy()));
            LessonRuns runs = new LessonRuns(session, lesson, ProgressListener.NONE);
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Snippet snippet) {
                    Outcome outcome = runs.run(snippet);
                    outcome.trace().printed().lines().map(String::strip).forEach(printed::add);
                    charts += outcome.trace().charts().size();
                }
            }
        }
        return new Ran(printed, charts);
    }
}
