package loftcoil.runner.session;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;

/** At most one shell made ahead in the background, for when the one in use is lost. */
class Spare implements AutoCloseable {

    private final SessionSetup setup;
    private final boolean ahead;
    private @Nullable CompletableFuture<Shell> coming;
    private boolean closed;

    Spare(SessionSetup setup) {
        this(setup, true);
    }

    /**
     * Shells of a setting.
     *
     * @param ahead false where one is made only when it is asked for
     */
    Spare(SessionSetup setup, boolean ahead) {
        this.setup = setup;
        this.ahead = ahead;
    }

    /** Begins to make one, unless there is one already or none is wanted ahead. Returns at once. */
    void prepare() {
        if (ahead) {
            begin();
        }
    }

    private synchronized void begin() {
        if (coming == null && !closed) {
            CompletableFuture<Shell> future = new CompletableFuture<>();
            coming = future;
            Thread maker = new Thread(() -> make(future), "spare shell");
            maker.setDaemon(true);
            maker.start();
        }
    }

    private void make(CompletableFuture<Shell> future) {
        try {
            future.complete(Shell.open(setup));
        } catch (RuntimeException | Error e) {
            future.completeExceptionally(e);
        }
    }

    /**
     * The shell made ahead, or a new one where there is none.
     *
     * @throws SessionException where it could not be made
     */
    Shell take() {
        CompletableFuture<Shell> future;
        synchronized (this) {
            if (closed) {
                throw new SessionException("The session is closed.");
            }
            begin();
            future = coming;
            coming = null;
        }
        try {
            return java.util.Objects.requireNonNull(future).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof SessionException known) {
                throw known;
            }
            throw new SessionException("Java for snippets could not be started: " + e.getCause(), e);
        }
    }

    /** Has a shell back that is whole and no longer wanted: ends it. */
    void giveBack(Shell whole) {
        whole.close();
    }

    /** Ends the spare one, even one that is still being made. */
    @Override
    public synchronized void close() {
        closed = true;
        if (coming != null) {
            CompletableFuture<?> ending = coming.thenAccept(Shell::close);
            if (ending.isCompletedExceptionally()) {
                // It never came to be, so there is nothing to end.
                return;
            }
            coming = null;
        }
    }
}
