package loftcoil.runner.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.terminal.TerminalFace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Walks through the course in the terminal. */
@Command(
        name = "terminal",
        description = "Walks through the course in this terminal, without a browser.",
        mixinStandardHelpOptions = true)
final class TerminalCommand implements Callable<Integer> {

    @Mixin
    private LearnerOptions learner = new LearnerOptions();

    @Override
    public Integer call() throws IOException {
        try (LearnerApp bench = learner.open()) {
            TerminalFace.run(bench, new SheetFile(bench));
        }
        return Refusals.FINE;
    }
}
