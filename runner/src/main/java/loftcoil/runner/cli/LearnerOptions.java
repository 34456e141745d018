package loftcoil.runner.cli;

import java.nio.file.Path;
import java.security.SecureRandom;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SessionSetup;
import loftcoil.runner.show.Workbench;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whose work: the learner's folder and the course. */
final class LearnerOptions {

    @Option(
            names = "--folder",
            paramLabel = "FOLDER",
            description =
                    "where your work is kept; made where it is missing (default: the folder loftcoil in your home)")
    private @Nullable Path folder;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description =
                    "chooses the numbers in your exercises when you start; a class can share one (default: by chance)")
    private @Nullable Long seed;

    @Mixin
    private CourseOptions course = new CourseOptions();

    Workbench open() {
        Path chosen = folder == null ? Path.of(System.getProperty("user.home"), "loftcoil") : folder;
        long newSeed = seed == null ? new SecureRandom().nextLong() : seed;
        var read = course.read();
        SessionSetup setup = SessionSetup.usual();
        return Workbench.open(read, ProgressFile.open(chosen.toAbsolutePath().normalize()), setup, newSeed);
    }
}
