package loftcoil.runner.cli;

import java.security.SecureRandom;
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
    private CourseOptions course = new CourseOptions();

    CourseApp open() {
        long newSeed = seed == null ? new SecureRandom().nextLong() : seed;
        var read = course.read();
        SessionSetup setup = SessionSetup.usual();
        return CourseApp.open(read, ProgressFile.open(folder.path()), setup, newSeed);
    }
}
