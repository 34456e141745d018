package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.CopyOption;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * Moves a file, again after a moment where that is refused: on some systems a search for viruses or a copying program that has just
 * seen a new file holds it for the blink of an eye.
 */
final class PatientMove {

    /** Six tries within a third of a second. */
    private static final int TRIES = 6;

    private static final long FIRST_PAUSE_MS = 10;

    private PatientMove() {}

    /** Something with files that may be refused. */
    @FunctionalInterface
    interface Work {
        void go() throws IOException;
    }

    static void move(Path from, Path to, CopyOption... how) throws IOException {
        patiently(() -> Files.move(from, to, how));
    }

    /**
     * Does it; again, after longer and longer pauses, where it is refused in a way that may pass.
     *
     * @throws IOException the last refusal, or at once one that will not pass, such as a full disk or a file that is not there
     */
    static void patiently(Work work) throws IOException {
        for (int i = 1; i < TRIES; i++) {
            try {
                work.go();
                return;
            } catch (FileSystemException refused) {
                if (!mayPass(refused)) {
                    throw refused;
                }
                pause(FIRST_PAUSE_MS << (i - 1));
            }
        }
        work.go();
    }

    /** Systems say it as a plain refusal, or as one that names another program; a full disk is told by its words. */
    private static boolean mayPass(FileSystemException refused) {
        boolean plain = refused.getClass() == FileSystemException.class
                && !String.valueOf(refused.getReason()).contains("No space left");
        return plain || refused instanceof AccessDeniedException;
    }

    private static void pause(long ms) throws IOException {
        try {
            TimeUnit.MILLISECONDS.sleep(ms);
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
            throw new IOException("ended while waiting for a file that is held", ending);
        }
    }
}
