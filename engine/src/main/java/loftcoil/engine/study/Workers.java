package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Does many like pieces of work on several threads; each piece knows its number, so the order does not matter. */
public final class Workers {

    /** Pieces taken at a time: few enough to stop soon and to share evenly, many enough not to meet at the counter. */
    private static final int BATCH = 32;

    private final int count;
    private final int batch;
    private final IntConsumer piece;
    private final ProgressListener watch;
    private final AtomicInteger next = new AtomicInteger();
    private final Object telling = new Object();
    private int done;

    private Workers(int count, int batch, IntConsumer piece, ProgressListener watch) {
        this.count = count;
        this.batch = batch;
        this.piece = piece;
        this.watch = watch;
    }

    /**
     * Does the pieces 0 to count − 1.
     *
     * @return how many were done; fewer than all where the watch cancelled
     */
    static int each(int count, int threads, IntConsumer piece, ProgressListener watch) {
        return each(new Workers(count, BATCH, piece, watch), threads);
    }

    /**
     * Does the pieces 0 to count − 1, each so long that they are taken one by one.
     *
     * @param count how many
     * @param threads on how many threads, 1 or more
     * @param piece does the piece of a number; what it throws ends the work and is thrown
     * @param watch is told after each, and may stop the rest
     * @return how many were done; fewer than all where the watch cancelled or the waiting thread was interrupted
     */
    public static int eachLong(int count, int threads, IntConsumer piece, ProgressListener watch) {
        return each(new Workers(count, 1, piece, watch), threads);
    }

    private static int each(Workers workers, int threads) {
        if (threads == 1) {
            workers.work();
        } else {
            workers.share(threads);
        }
        return workers.done;
    }

    private void share(int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "loftcoil-study");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Callable<Object>> jobs = new ArrayList<>();
            for (int thread = 0; thread < threads; thread++) {
                jobs.add(Executors.callable(this::work));
            }
            for (Future<Object> job : pool.invokeAll(jobs)) {
                job.get();
            }
        } catch (InterruptedException interrupted) {
            // The waiting thread was asked to stop: the workers are stopped below, what is done stays done.
            Thread.currentThread().interrupt();
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(failed);
        } finally {
            pool.shutdownNow();
        }
    }

    private void work() {
        while (!watch.cancelled() && !Thread.currentThread().isInterrupted()) {
            int from = next.getAndAdd(batch);
            if (from >= count) {
                return;
            }
            int to = Math.min(from + batch, count);
            for (int i = from; i < to; i++) {
                piece.accept(i);
            }
            synchronized (telling) {
                done += to - from;
                watch.done(done, count);
            }
        }
    }
}
