package loftcoil.engine.clear;

import loftcoil.engine.study.ProgressListener;

/** Tells how far a search of several parts is, of which only the first are known when it begins. */
final class Telling implements ProgressListener {

    private final ProgressListener watch;
    private int of;
    private int before;
    private int now;

    Telling(ProgressListener watch) {
        this.watch = watch;
    }

    /** So many more pieces are to come at most. */
    void expect(int more) {
        of += more;
    }

    /** The next part begins. */
    void part() {
        before += now;
        now = 0;
    }

    /** All is done. */
    void end() {
        watch.done(of, of);
    }

    @Override
    public void done(int done, int all) {
        now = done;
        watch.done(Math.min(before + done, of), of);
    }

    @Override
    public boolean cancelled() {
        return watch.cancelled();
    }
}
