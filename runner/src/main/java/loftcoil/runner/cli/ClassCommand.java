package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.course.Course;
import loftcoil.runner.workshop.ClassRoll;
import loftcoil.runner.workshop.ClassSummary;
import loftcoil.runner.workshop.SummaryCsv;
import loftcoil.runner.workshop.SummaryHtml;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A summary of a class for its teacher. */
@Command(
        name = "class",
        description =
                "Sums up a class for its teacher: who is where, which question trips whom, with which wrong idea.%n"
                        + "FOLDER holds each learner's own folder, named after the learner, or each one's progress.json under%n"
                        + "the learner's name. The files are only looked at; one that is damaged is named and passed over.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Exit status: 0 summed up, even where files were passed over; 2 the folder or a target is refused."
        })
final class ClassCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FOLDER", description = "the learners' folders or progress files")
    private Path folder = Path.of("");

    @Option(names = "--to", paramLabel = "FILE.html", description = "write the summary as a page")
    private @Nullable Path page;

    @Option(
            names = "--csv",
            paramLabel = "FILE.csv",
            description = "write a table with a row for each learner and question")
    private @Nullable Path table;

    @Mixin
    private CourseOptions courseOptions = new CourseOptions();

    @Mixin
    private Waiting waiting = new Waiting();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        return waiting.during(this::sum);
    }

    private int sum() {
        Optional<Path> html = target("--to", page, ".html");
        Optional<Path> csv = target("--csv", table, ".csv");
        ClassRoll roll = read();
        waiting.says("Reading the lessons");
        Course course = courseOptions.read();
        waiting.says("Summing up");
        ClassSummary summary = ClassSummary.of(course, roll);
        waiting.ends();
        html.ifPresent(file -> write(file, SummaryHtml.write(summary)));
        csv.ifPresent(file -> write(file, SummaryCsv.write(course, roll)));
        print(summary);
        return Refusals.FINE;
    }

    /** A target has its own ending, so that a slip of the hand never writes over a learner's file. */
    private static Optional<Path> target(String option, @Nullable Path file, String ending) {
        if (file != null && !file.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw RefusedException.of(option, file.toString(), "a file name that ends in " + ending);
        }
        Optional<Path> target = Optional.ofNullable(file);
        target.ifPresent(TargetFile::tryOut);
        return target;
    }

    private ClassRoll read() {
        if (!Files.isDirectory(folder)) {
            throw RefusedFile.of(folder, "no such folder", "the folder that holds the learners' folders");
        }
        try {
            return ClassRoll.read(folder, waiting.counting("Looking at learner")::done);
        } catch (IOException unreadable) {
            throw RefusedFile.of(folder, "cannot be listed", "a readable folder");
        }
    }

    private void write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw RefusedFile.unwritable(file, failed, "a file that may be written");
        }
        spec.commandLine().getOut().println("Written: " + file);
    }

    private void print(ClassSummary summary) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                summary.learners().size() == 1
                        ? "1 learner."
                        : summary.learners().size() + " learners.");
        int of =
                summary.lessons().stream().mapToInt(ClassSummary.LessonName::of).sum();
        summary.learners().forEach(learner -> {
            int done = learner.done().stream().mapToInt(Integer::intValue).sum();
            out.println("  " + learner.name() + ": " + done + " of " + of + " done, " + learner.wrong()
                    + (learner.wrong() == 1 ? " wrong answer" : " wrong answers")
                    + (learner.last().isEmpty() ? "" : "; last at " + learner.last()));
        });
        summary.skipped().forEach(each -> out.println("Not read: " + each.name() + ": " + each.why()));
        out.flush();
    }
}
