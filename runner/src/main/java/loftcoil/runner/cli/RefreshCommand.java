package loftcoil.runner.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.terminal.TerminalFace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Walks through the refresher in the terminal. */
@Command(
        name = "refresh",
        description =
                "For anyone who did the course years ago: a quarter of an hour of questions in this terminal that finds%n"
                        + "which lessons have faded. The page has it too.",
        mixinStandardHelpOptions = true)
final class RefreshCommand implements Callable<Integer> {

    @Mixin
    private LearnerOptions learner = new LearnerOptions();

    @Override
    public Integer call() throws IOException {
        try (LearnerApp bench = learner.open()) {
            TerminalFace.refresh(bench, new SheetFile(bench));
        }
        return Refusals.FINE;
    }
}
