package loftcoil.runner.cli;

import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.handout.Paper;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is printed on. */
final class PaperOption {

    @Option(names = "--paper", paramLabel = "SIZE", description = "a4 or letter (default: letter in US units, else a4)")
    private @Nullable String paper;

    /** What was named, else what goes with the units. */
    Paper chosen(Units units) {
        return Optional.ofNullable(paper)
                .map(name -> Paper.named(name)
                        .orElseThrow(() -> RefusedException.of(
                                "--paper", name.toLowerCase(Locale.ROOT) + " is no paper known here", "a4, letter")))
                .orElse(Paper.usual(units));
    }
}
