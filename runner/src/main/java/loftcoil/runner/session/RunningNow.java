package loftcoil.runner.session;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A run that can be ended from outside, once, for one cause: first it is asked to stop; if it still goes on after a
 * moment, as a loop that catches everything does, its Java machine is ended.
 */
final class RunningNow implements AutoCloseable {

    private static final long MOMENT_MS = 500;
    private static final long LOOK_MS = 200;

    private static final ScheduledExecutorService CLOCK = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "snippet limits");
        thread.setDaemon(true);
        return thread;
    });

    private final Shell shell;
    private final AtomicReference<Outcome.@Nullable Cause> cause = new AtomicReference<>();
    private final TimeWatch time;
    private final ScheduledFuture<?> looking;
    private @Nullable ScheduledFuture<?> killing;
    private boolean over;

    RunningNow(Shell shell, Limits limits) {
        this(shell, limits.time(), limits.clock());
    }

    /** A run that only the clock ends. */
    RunningNow(Shell shell, Duration limit) {
        this(shell, limit, limit);
    }

    private RunningNow(Shell shell, Duration mayCompute, Duration mayWait) {
        this.shell = shell;
        this.time = new TimeWatch(mayCompute, mayWait, shell::computed, System::nanoTime);
        this.looking = CLOCK.scheduleWithFixedDelay(
                () -> time.look().ifPresent(this::end), LOOK_MS, LOOK_MS, TimeUnit.MILLISECONDS);
    }

    /** Ends the run; a second cause changes nothing. Returns at once. */
    void end(Outcome.Cause why) {
        if (cause.compareAndSet(null, why)) {
            CLOCK.execute(this::stop);
        }
    }

    private synchronized void stop() {
        if (!over) {
            shell.stop();
            killing = CLOCK.schedule(this::kill, MOMENT_MS, TimeUnit.MILLISECONDS);
        }
    }

    private synchronized void kill() {
        if (!over) {
            shell.kill();
        }
    }

    /** Why it was ended; empty while it was not. */
    Optional<Outcome.Cause> cause() {
        return Optional.ofNullable(cause.get());
    }

    /** Processor time it has taken, as far as it was looked at. */
    long computedMillis() {
        return time.computed().toMillis();
    }

    /** It has come back; nothing may touch the machine on its account any more. */
    @Override
    public synchronized void close() {
        over = true;
        looking.cancel(false);
        if (killing != null) {
            killing.cancel(false);
        }
    }
}
