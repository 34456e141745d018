package loftcoil.engine.study;

/** Asks to stop once so much has been told as done. */
final class StopsAfter implements ProgressListener {

    private final int most;
    private int told;

    StopsAfter(int most) {
        this.most = most;
    }

    @Override
    public void done(int done, int of) {
        told = done;
    }

    @Override
    public boolean cancelled() {
        return told >= most;
    }
}
