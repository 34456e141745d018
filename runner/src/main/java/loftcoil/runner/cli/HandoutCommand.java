package loftcoil.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.course.Course;
import loftcoil.runner.handout.LessonHandout;
import loftcoil.runner.handout.LessonSetting;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.session.SessionSetup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a lesson into a sheet for a class, or the teacher's key to it. */
@Command(
        name = "handout",
        description = "Makes a lesson into a sheet with blanks and lines to write on, or the teacher's key to it.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 written; 2 the lesson or an option is refused."})
final class HandoutCommand implements Callable<Integer> {

    @Parameters(paramLabel = "LESSON", description = "the lesson, by its name such as 01-warm-water, or by its number")
    private String lesson = "";

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FILE",
            description = "the sheet to write, .html or .pdf; one that is there is replaced")
    private Path to = Path.of("");

    @Option(names = "--key", description = "the teacher's key: answers, worked solutions, what to say to wrong ideas")
    private boolean key;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "the seed of the class, as given to its learners (default: ${DEFAULT-VALUE})")
    private long seed;

    @Mixin
    private PaperOption paper = new PaperOption();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CourseOptions course = new CourseOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Units shown = units.chosen(new FolderOption());
        LessonSetting setting = new LessonSetting(paper.chosen(shown), shown, seed, key);
        TargetFile target = TargetFile.of(to);
        Course read = course.read();
        Lesson chosen = find(read);
        spec.commandLine()
                .getErr()
                .println(
                        "Running the Java of the lesson; that takes some seconds. Ctrl+C stops it, and nothing is written then.");
        spec.commandLine().getErr().flush();
        LessonHandout handout = LessonHandout.of(
                read,
                chosen,
                SessionSetup.usual(),
                setting,
                new SearchProgress(spec.commandLine().getErr(), "Java of the lesson that has run"));
        target.write(handout::html, handout::pdf);
        PrintWriter out = spec.commandLine().getOut();
        out.println((key ? "The key to '" : "The handout of '") + chosen.title() + "', class seed " + seed + ", is in "
                + target.path());
        out.flush();
        return Refusals.FINE;
    }

    private Lesson find(Course read) {
        return read.lessons().stream()
                .filter(each -> each.id().equals(lesson) || number(each).equals(lesson.replaceFirst("^0+(?=\\d)", "")))
                .findFirst()
                .orElseThrow(() -> RefusedException.of(
                        "LESSON",
                        "there is no lesson '" + lesson + "'",
                        read.lessons().stream().map(Lesson::id).collect(Collectors.joining(", "))));
    }

    private static String number(Lesson each) {
        return each.id().replaceFirst("-.*", "").replaceFirst("^0+(?=\\d)", "");
    }
}
