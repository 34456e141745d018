package loftcoil.runner.cli;

import java.security.SecureRandom;
import java.util.Optional;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SessionSetup;
import loftcoil.runner.show.CourseApp;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whose work: the learner's folder and the course. */
final class LearnerOptions {

    @Mixin
    private FolderOption folder = new FolderOption();

    @Option(
            names = "--seed",
            paramLabel = "N",
            description =
                    "chooses the numbers in your exercises when you start; a class can share one (default: by chance)")
    private @Nullable Long seed;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CourseOptions course = new CourseOptions();

    /** The units named, else those kept in the folder. */
    Units units() {
        return units.chosen(folder);
    }

    /** Opens the learner's work in the units the learner chose. */
    CourseApp open() {
        Optional<Units> said = units.said();
        CourseApp bench = opened();
        said.ifPresent(bench::useForNow);
        return bench;
    }

    private CourseApp opened() {
        long newSeed = seed == null ? new SecureRandom().nextLong() : seed;
        var read = course.readAsAsked();
        SessionSetup setup = SessionSetup.usual();
        return CourseApp.open(read, ProgressFile.open(folder.path()), setup, newSeed);
    }
}
