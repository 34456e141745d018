package loftcoil.runner.cli;

import java.nio.file.Files;
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

    /** The design that was named or, where none was, the learner's own. */
    Path design(@Nullable Path named) {
        if (named != null) {
            return named;
        }
        Path own = path().resolve("design.json");
        if (!Files.exists(own)) {
            throw RefusedFile.of(
                    own,
                    "you have no design of your own yet",
                    "decide something in a lesson first, or name a design file");
        }
        return own;
    }
}
