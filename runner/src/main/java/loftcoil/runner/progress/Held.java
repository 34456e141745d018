package loftcoil.runner.progress;

import java.io.IOException;
import java.util.Locale;

/**
 * A file that another program holds for a moment. On Windows a virus scanner, a sync program or an editor that looks at a file keeps
 * others from replacing it; a little later it goes. Elsewhere a refusal stands.
 */
final class Held {

    private static final int TRIES = 20;
    private static final int BETWEEN_MS = 50;

    private Held() {}

    /** A deed on a file. */
    @FunctionalInterface
    interface Deed {
        /** Does it, or refuses. */
        void run() throws IOException;
    }

    /** Does it, and tries again for a second where this system holds files. */
    static void patiently(Deed deed) throws IOException {
        boolean holds = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        patiently(deed, holds ? TRIES : 1, BETWEEN_MS);
    }

    /**
     * Does it, at most so many times.
     *
     * @param tries at least 1
     * @param betweenMs wait before another try
     * @throws IOException the last refusal
     */
    static void patiently(Deed deed, int tries, int betweenMs) throws IOException {
        for (int left = tries; ; left--) {
            try {
                deed.run();
                return;
            } catch (IOException held) {
                if (left <= 1 || !waited(betweenMs)) {
                    throw held;
                }
            }
        }
    }

    private static boolean waited(int ms) {
        try {
            Thread.sleep(ms);
            return true;
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
