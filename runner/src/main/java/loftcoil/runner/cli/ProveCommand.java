package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.course.Course;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.LessonMinutes;
import loftcoil.runner.prove.ExerciseTable;
import loftcoil.runner.prove.LessonProof;
import loftcoil.runner.prove.Proof;
import loftcoil.runner.session.SessionSetup;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the whole course headless and compares every number. */
@Command(
        name = "prove",
        description = "Runs every snippet and checks every worked solution, known mistake and published case.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 all hold; 1 at least one fault; 2 the course or a lesson's name is refused."})
final class ProveCommand implements Callable<Integer> {

    @Mixin
    private CourseOptions course = new CourseOptions();

    @Parameters(
            paramLabel = "LESSON",
            arity = "0..*",
            description = "prove these lessons only, such as 02-tank-above-coil (default: the whole course)")
    private List<String> lessons = List.of();

    @Option(
            names = "--seeds",
            split = ",",
            paramLabel = "N",
            defaultValue = "1,2,3",
            description = "learners' seeds to try, separated by commas (default: ${DEFAULT-VALUE})")
    private List<Long> seeds = List.of();

    @Option(
            names = "--table",
            paramLabel = "FILE",
            description =
                    "write a table of every exercise there: what it needs, where that is taught and shown, its tolerance"
                            + " and the nearest wrong idea (comma-separated values)")
    private @Nullable Path table;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Course whole = course.read();
        if (table != null) {
            TargetFile.tryOut(table);
        }
        Course chosen = chosen(whole);
        List<String> names = chosen.names();
        List<LessonProof> proofs = new Proof(chosen, SessionSetup.usual(), seeds)
                .run(lesson -> runsNow(names, lesson), proof -> {
                    print(out, proof);
                    whole.lesson(proof.lessonId()).ifPresent(lesson -> minutes(out, lesson));
                });
        if (table != null) {
            write(table, ExerciseTable.of(whole, proofs));
        }
        return proofs.stream().allMatch(proof -> proof.faults().isEmpty()) ? Refusals.FINE : Refusals.OWN_FAULT;
    }

    /** Says on the error stream which lesson runs now, so that whoever waits sees how far it is. */
    private void runsNow(List<String> names, Lesson lesson) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(
                "Lesson " + (names.indexOf(lesson.id()) + 1) + " of " + names.size() + " runs now: " + lesson.title());
        err.flush();
    }

    /** A header that says another time than the count is told; nothing is wrong with what the lesson teaches. */
    private static void minutes(PrintWriter out, Lesson lesson) {
        int counted = LessonMinutes.of(lesson);
        if (counted != lesson.minutes()) {
            out.println("    its header says " + lesson.minutes() + " minutes, counted are " + counted);
        }
    }

    private static void write(Path file, String table) {
        try {
            Files.writeString(file, table);
        } catch (IOException refused) {
            throw RefusedFile.unwritable(file, refused, "a file that may be written");
        }
    }

    private Course chosen(Course whole) {
        if (lessons.isEmpty()) {
            return whole;
        }
        List<Fault> unknown = lessons.stream()
                .filter(name -> whole.lesson(name).isEmpty())
                .map(name -> known(whole).unknown("LESSON", name))
                .toList();
        if (!unknown.isEmpty()) {
            throw new RefusedException(unknown);
        }
        return whole.only(lessons);
    }

    private static KnownNames known(Course whole) {
        return new KnownNames("lesson", whole.lessons().stream().map(Lesson::id).toList());
    }

    private static void print(PrintWriter out, LessonProof proof) {
        out.println(proof.line());
        proof.faults().forEach(fault -> out.println("    " + fault));
        if (out.checkError()) {
            throw new StandardOutput.LostException();
        }
    }
}
