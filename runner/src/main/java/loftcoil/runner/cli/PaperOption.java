package loftcoil.runner.cli;

import java.util.Locale;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.handout.Paper;
import picocli.CommandLine.Option;

/** What is printed on. */
final class PaperOption {

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "a4 or letter (default: ${DEFAULT-VALUE})")
    private String paper = "";

    Paper chosen() {
        return Paper.named(paper)
                .orElseThrow(() -> RefusedException.of(
                        "--paper", paper.toLowerCase(Locale.ROOT) + " is no paper known here", "a4, letter"));
    }
}
