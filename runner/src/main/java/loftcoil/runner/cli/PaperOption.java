package loftcoil.runner.cli;

import java.util.Locale;
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
                .orElseThrow(() -> new RefusedInputException(
                        "--paper: " + paper.toLowerCase(Locale.ROOT) + " is no paper known here; allowed: a4, letter"));
    }
}
