package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.page.PageServer;
import loftcoil.runner.page.PageSetup;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SessionSetup;
import loftcoil.runner.show.CourseApp;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.View;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Tries on this computer what a learner will need: for a teacher before a class, and for whoever packs Loftcoil for carrying.
 */
@Command(
        name = "self-check",
        description = "Tries on this computer, in a folder that is thrown away, whether the page answers, Java runs,%n"
                + "plots are drawn and the build sheet is made, and says how long each took.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 all of it works here; 1 or 2 something does not, and the last line says what."})
final class SelfCheckCommand implements Callable<Integer> {

    /** Lessons whose Java is run: the first has the plainest, the second the drag and the learner's loop. */
    private static final int LESSONS = 2;

    private static final long SEED = 1;
    private static final double NANOS = 1e9;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch"));
        Path folder = Files.createTempDirectory("loftcoil-self-check");
        try {
            check(folder, out);
        } finally {
            remove(folder);
        }
        out.println("All of it works here.");
        return Refusals.FINE;
    }

    private static void check(Path folder, PrintWriter out) throws IOException, InterruptedException {
        Clock clock = new Clock(out);
        int exercises = CourseReader.builtIn().exercises().size();
        clock.tell("course read and checked, " + exercises + " exercises");
        Course course = CourseReader.builtInAsAsked();
        try (LearnerApp app = CourseApp.open(course, ProgressFile.open(folder), SessionSetup.usual(), SEED);
                PageServer server =
                        PageServer.open(app, new PageSetup(0, SelfCheckCommand::tell, new HandoutPrinter(app)))) {
            PageVisit visit = PageVisit.enter(server.address());
            clock.tell("page opened, " + visit.readAll() + " files of it");
            int ways = Browser.ways(System.getProperty("os.name", ""), System.getenv())
                    .size();
            clock.tell(
                    ways == 0
                            ? "no screen here: the address has to be copied into a browser"
                            : ways + " ways to open a browser");
            List<View.LessonLine> lessons = app.course().lessons();
            for (View.LessonLine line : lessons.subList(0, Math.min(LESSONS, lessons.size()))) {
                visit.get("/api/lesson/" + line.id());
                clock.tell("lesson read: " + line.title());
                clock.tell(runs(app, visit, line.id()) + " pieces of Java run");
            }
            visit.get("/api/safety");
            clock.tell("a year of the example house computed, its dangers judged");
            visit.get("/sheet/show/a4");
            clock.tell("build sheet made");
            visit.get("/sheet/pdf/letter");
            clock.tell("build sheet as PDF");
        }
    }

    private static void tell(Throwable trouble) {
        trouble.printStackTrace();
    }

    private static int runs(LearnerApp app, PageVisit visit, String lessonId) throws IOException, InterruptedException {
        List<View.Snippet> snippets = app.lesson(lessonId).steps().stream()
                .filter(View.Snippet.class::isInstance)
                .map(View.Snippet.class::cast)
                .toList();
        for (View.Snippet snippet : snippets) {
            String reply = visit.post(
                    "/api/run",
                    Map.of(
                            "lesson", lessonId,
                            "step", snippet.id(),
                            "source", snippet.source(),
                            "dragged", Map.of()));
            if (!reply.contains("\"state\":\"done\"")) {
                throw new IOException("the Java of " + lessonId + ", " + snippet.id() + ", did not run: " + reply);
            }
        }
        return snippets.size();
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted((one, other) -> other.compareTo(one)).toList()) {
                Files.delete(path);
            }
        }
    }

    /** Says how long each part took. */
    private static final class Clock {

        private final PrintWriter out;
        private long last = System.nanoTime();

        Clock(PrintWriter out) {
            this.out = out;
        }

        void tell(String what) {
            long now = System.nanoTime();
            out.printf("%6.2f s  %s%n", (now - last) / NANOS, what);
            out.flush();
            last = now;
        }
    }
}
