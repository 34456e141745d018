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

    private static final String ALL = "all";

    @Parameters(
            paramLabel = "LESSON",
            description = "the lesson, by its name such as 01-warm-water, or by its number; or all, a PDF of each")
    private String lesson = "";

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FILE",
            description =
                    "the sheet to write, .html or .pdf; one that is there is replaced. For all lessons: the folder")
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

    @Mixin
    private Waiting waiting = new Waiting();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        return waiting.during(this::make);
    }

    private int make() {
        Units shown = units.chosen(new FolderOption());
        LessonSetting setting = new LessonSetting(paper.chosen(shown), shown, seed, key);
        return lesson.equals(ALL) ? all(setting) : one(setting);
    }

    private int one(LessonSetting setting) {
        TargetFile target = TargetFile.of(to);
        waiting.says("Reading the lessons");
        Course read = course.read();
        waiting.ends();
        Lesson chosen = find(read);
        write(read, chosen, setting, target, "");
        waiting.ends();
        said((key ? "The key to '" : "The handout of '") + chosen.title() + "', class seed " + seed + ", is in "
                + target.path());
        return Refusals.FINE;
    }

    /** A PDF of each lesson into a folder. */
    private int all(LessonSetting setting) {
        TargetFile.folder(to);
        Course read = course.read();
        int number = 0;
        for (Lesson each : read.lessons()) {
            String which = "Lesson " + ++number + " of " + read.lessons().size() + ": ";
            write(read, each, setting, TargetFile.of(to.resolve(each.id() + (key ? "-key" : "") + ".pdf")), which);
        }
        waiting.ends();
        said((key ? "The keys to " : "The handouts of ") + number + " lessons, class seed " + seed + ", are in " + to);
        return Refusals.FINE;
    }

    private void write(Course read, Lesson chosen, LessonSetting setting, TargetFile target, String which) {
        waiting.says(which + "running its Java; Ctrl+C stops it");
        LessonHandout handout = LessonHandout.of(
                read,
                chosen,
                SessionSetup.usual(),
                setting,
                waiting.counting(which + "Java of the lesson that has run,"));
        waiting.says(which + "setting its pages");
        target.write(handout::html, handout::pdf);
    }

    private void said(String words) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(words);
        out.flush();
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
