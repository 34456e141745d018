package loftcoil.runner.session;

import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Decides when a run has gone on too long. A busy computer gives a snippet little of its time, which is not the
 * snippet's fault, so the processor time of its own Java machine is what counts; the clock ends only what waits.
 */
final class TimeWatch {

    private final Duration mayCompute;
    private final Duration mayWait;
    private final Supplier<Optional<Duration>> processor;
    private final LongSupplier nanoTime;
    private final long began;
    private Optional<Duration> before = Optional.empty();
    private volatile Duration computed = Duration.ZERO;

    /**
     * Begins now.
     *
     * @param processor processor time of the machine since it started; empty where it cannot be told, and then the clock
     *     alone decides
     * @param nanoTime a clock in nanoseconds
     */
    TimeWatch(Duration mayCompute, Duration mayWait, Supplier<Optional<Duration>> processor, LongSupplier nanoTime) {
        this.mayCompute = mayCompute;
        this.mayWait = mayWait;
        this.processor = processor;
        this.nanoTime = nanoTime;
        this.began = nanoTime.getAsLong();
    }

    /** Why the run must be ended now; empty where it may go on. */
    Optional<Outcome.Cause> look() {
        Optional<Duration> now = processor.get();
        if (before.isEmpty()) {
            // What it took until the first look does not count: asking costs more than most snippets.
            before = now;
        }
        if (now.isPresent() && before.isPresent()) {
            computed = now.get().minus(before.get());
        }
        if (computed.compareTo(mayCompute) > 0) {
            return Optional.of(Outcome.Cause.TIME);
        }
        boolean late = nanoTime.getAsLong() - began > mayWait.toNanos();
        return late ? Optional.of(Outcome.Cause.WAIT) : Optional.empty();
    }

    /** Processor time since the first look. */
    Duration computed() {
        return computed;
    }
}
