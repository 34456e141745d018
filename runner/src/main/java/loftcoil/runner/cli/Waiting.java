package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntSupplier;
import loftcoil.engine.study.ProgressListener;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/**
 * Tells whoever waits how far a long command is: one line on the error stream that is written over and gone at the end. Where nobody
 * sees that stream, in a file or a pipe, nothing is written.
 */
final class Waiting {

    /** The error stream of this process on a system that shows open files; what it leads to has a name of its own there. */
    private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

    @Option(
            names = "--progress",
            negatable = true,
            description = "say on the error stream how far it is, or say nothing (default: where that is a terminal)")
    private @Nullable Boolean wanted;

    @Spec(Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    private int shown;

    /** Says what is done now. */
    void says(String words) {
        if (seen()) {
            over(words);
        }
    }

    /**
     * A count that is told each time.
     *
     * @param what it is that is counted, such as {@code Learner}
     */
    ProgressListener counting(String what) {
        return new ProgressListener() {
            @Override
            public void done(int done, int of) {
                says(what + " " + done + " of " + of);
            }
        };
    }

    /** Does the work of a command. The line is taken away at its end, however it ends: what comes next begins on a clean one. */
    int during(IntSupplier work) {
        try {
            return work.getAsInt();
        } finally {
            ends();
        }
    }

    /** The line is taken away. */
    void ends() {
        if (shown > 0) {
            over("");
            shown = 0;
        }
    }

    private void over(String words) {
        PrintWriter err = spec.commandLine().getErr();
        err.print("\r" + words + " ".repeat(Math.max(0, shown - words.length())) + (words.isEmpty() ? "\r" : ""));
        err.flush();
        shown = words.length();
    }

    private boolean seen() {
        return wanted == null ? isTerminal() : wanted;
    }

    private static boolean isTerminal() {
        if (!Files.exists(Path.of("/proc/self/fd"))) {
            return System.console() != null;
        }
        try {
            String leadsTo = Files.readSymbolicLink(ERROR_STREAM).toString();
            return leadsTo.startsWith("/dev/pts/") || leadsTo.startsWith("/dev/tty") || leadsTo.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException closed) {
            return false;
        }
    }
}
