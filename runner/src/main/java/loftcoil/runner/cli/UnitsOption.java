package loftcoil.runner.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.ProgressCopy;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whose units are shown: those named here, else those the learner chose. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "metric or us (default: those you chose in the course, else metric)")
    private @Nullable String units;

    /** Those that were named, if any. */
    Optional<Units> said() {
        return Optional.ofNullable(units)
                .map(name -> Units.named(name).orElseThrow(() -> RefusedException.of("--units", name, "metric, us")));
    }

    /** Those that were named, else those kept in that folder, else metric ones. */
    Units chosen(FolderOption folder) {
        return said().or(() -> kept(folder.path().resolve("progress.json"))).orElse(Units.METRIC);
    }

    private static Optional<Units> kept(Path progress) {
        return Files.isReadable(progress) && ProgressCopy.read(progress) instanceof ProgressCopy.Usable usable
                ? Units.named(usable.progress().units())
                : Optional.empty();
    }
}
