package loftcoil.runner.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a learner's work is. */
final class FolderOption {

    @Option(
            names = "--folder",
            paramLabel = "FOLDER",
            description =
                    "where your work is kept; made where it is missing (default: the folder loftcoil in your home)")
    private @Nullable Path folder;

    Path path() {
        Path chosen = folder == null ? Path.of(System.getProperty("user.home"), "loftcoil") : folder;
        return chosen.toAbsolutePath().normalize();
    }
}
