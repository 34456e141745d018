package loftcoil.runner.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/**
 * Shells that outlive their session: one that was given back whole is cleared and serves the next session of this process with the
 * same setting. For tests that are not about the starting and ending of Java machines, which takes most of their time.
 */
final class KeptShells extends Spare {

    private static final Map<SessionSetup, Deque<Shell>> FREE = new HashMap<>();

    private final SessionSetup setup;
    private boolean closed;

    private KeptShells(SessionSetup setup) {
        super(setup, false);
        this.setup = setup;
    }

    static Session session(SessionSetup setup) {
        return Session.open(setup, new KeptShells(setup));
    }

    private Deque<Shell> free() {
        return FREE.computeIfAbsent(setup, key -> new ArrayDeque<>());
    }

    @Override
    Shell take() {
        synchronized (this) {
            if (closed) {
                throw new SessionException("The session is closed.");
            }
        }
        Shell shell;
        synchronized (FREE) {
            shell = free().poll();
        }
        return shell == null || shell.ended() ? Shell.open(setup) : shell;
    }

    @Override
    void giveBack(Shell whole) {
        if (whole.ended() || whole.spoilt()) {
            whole.close();
            return;
        }
        whole.clear();
        synchronized (FREE) {
            free().push(whole);
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
    }
}
