package loftcoil.runner.cli;

import java.io.PrintWriter;
import loftcoil.engine.study.ProgressListener;

/** Tells on the error stream how far a search is, a line each quarter: also where that is no terminal that could be written over. */
final class SearchProgress implements ProgressListener {

    private static final int QUARTERS = 4;

    private final PrintWriter err;
    private final String what;
    private int told;

    SearchProgress(PrintWriter err) {
        this(err, "Searching what would clear the dangers");
    }

    SearchProgress(PrintWriter err, String what) {
        this.err = err;
        this.what = what;
    }

    @Override
    public void done(int done, int of) {
        int quarter = done * QUARTERS / of;
        if (quarter > told) {
            told = quarter;
            err.println(what + ": " + done + " of " + of);
            err.flush();
        }
    }
}
