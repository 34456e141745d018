package loftcoil.runner.session;

import java.time.Duration;

/**
 * What one run of a snippet may take. Processor time is what counts, so that a busy or old computer ends nothing early;
 * the clock only ends what sleeps or waits for ever.
 *
 * @param time processor time of the snippet's own Java machine, above zero
 * @param clock time by the clock, not below {@code time}
 * @param memoryMb heap of the snippet's own Java machine in megabytes, 32 to 4096
 * @param printedChars how many printed characters are kept, at least 1; a snippet that prints {@value #FLOOD} times as
 *     much is stopped
 * @param charts how many charts are kept, at least 1; later ones are dropped
 */
public record Limits(Duration time, Duration clock, int memoryMb, int printedChars, int charts) {

    /** How many times the kept text a snippet may print before it is stopped. */
    static final int FLOOD = 16;

    /** How much longer by the clock a snippet may take where nothing else is said. */
    private static final int PATIENCE = 6;

    private static final int LEAST_MEMORY_MB = 32;
    private static final int MOST_MEMORY_MB = 4096;

    /** Refuses limits that would leave nothing to run in. */
    public Limits {
        if (time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException("time: " + time + "; allowed: above zero");
        }
        if (clock.compareTo(time) < 0) {
            throw new IllegalArgumentException("clock: " + clock + "; allowed: " + time + " or more");
        }
        if (memoryMb < LEAST_MEMORY_MB || memoryMb > MOST_MEMORY_MB) {
            throw new IllegalArgumentException(
                    "memoryMb: " + memoryMb + "; allowed: " + LEAST_MEMORY_MB + " to " + MOST_MEMORY_MB);
        }
        if (printedChars < 1) {
            throw new IllegalArgumentException("printedChars: " + printedChars + "; allowed: 1 or more");
        }
        if (charts < 1) {
            throw new IllegalArgumentException("charts: " + charts + "; allowed: 1 or more");
        }
    }

    /** Limits with {@value #PATIENCE} times the processor time by the clock. */
    public Limits(Duration time, int memoryMb, int printedChars, int charts) {
        this(time, time.multipliedBy(PATIENCE), memoryMb, printedChars, charts);
    }

    /** Ten seconds of computing within a minute, 256 MB, 64 thousand characters and 12 charts. */
    public static Limits usual() {
        return new Limits(Duration.ofSeconds(10), 256, 64_000, 12);
    }
}
