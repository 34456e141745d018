package loftcoil.runner.session;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Shells that outlive their session: one that was given back whole is cleared and serves the next session of this process. For
 * tests that are not about the starting and ending of Java machines, which takes most of their time.
 */
final class KeptShells extends Spare {

    private static final SessionSetup SETUP = SharedSession.patient();
    private static final Deque<Shell> FREE = new ArrayDeque<>();

    private boolean closed;

    private KeptShells() {
        super(SETUP);
    }

    static Session session() {
        return Session.open(SETUP, new KeptShells());
    }

    @Override
    void prepare() {
        // None is made ahead: the next session brings its own.
    }

    @Override
    synchronized Shell take() {
        if (closed) {
            throw new SessionException("The session is closed.");
        }
        Shell free;
        synchronized (FREE) {
            free = FREE.poll();
        }
        return free == null || free.ended() ? Shell.open(SETUP) : free;
    }

    @Override
    void giveBack(Shell whole) {
        if (whole.ended() || whole.spoilt()) {
            whole.close();
            return;
        }
        whole.clear();
        synchronized (FREE) {
            FREE.push(whole);
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
    }
}
