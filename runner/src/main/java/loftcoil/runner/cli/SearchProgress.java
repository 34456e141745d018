package loftcoil.runner.cli;

import java.io.PrintWriter;
import loftcoil.engine.study.ProgressListener;

/** Tells on the error stream how far a search is, on one line that is written over; only where somebody looks at it. */
final class SearchProgress implements ProgressListener {

    private final PrintWriter err;

    SearchProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void done(int done, int of) {
        if (System.console() == null) {
            return;
        }
        err.print("\rSearching what would clear the dangers: " + done + " of " + of + " ");
        if (done == of) {
            err.println();
        }
        err.flush();
    }
}
