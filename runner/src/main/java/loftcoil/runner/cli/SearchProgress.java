package loftcoil.runner.cli;

import java.io.PrintWriter;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.watch.Watch;
import org.jspecify.annotations.Nullable;

/** Tells on the error stream how far a search is, a line each quarter: also where that is no terminal that could be written over. */
final class SearchProgress implements ProgressListener, Watch {

    private static final int QUARTERS = 4;

    private final PrintWriter err;
    private final String what;
    private int told;
    private @Nullable Stage toldOf;

    SearchProgress(PrintWriter err) {
        this(err, "Searching what would clear the dangers");
    }

    SearchProgress(PrintWriter err, String what) {
        this.err = err;
        this.what = what;
    }

    /** A line for each stage of a sheet. */
    @Override
    public void at(Stage stage, int done, int of) {
        if (stage != toldOf) {
            toldOf = stage;
            err.println("Working out " + stage.words() + ".");
            err.flush();
        }
    }

    @Override
    public boolean cancelled() {
        return false;
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
