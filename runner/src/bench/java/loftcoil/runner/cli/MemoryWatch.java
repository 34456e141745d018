package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The most memory that a process and all it started took together, as the sum of their proportional set sizes: what they share counts
 * once. Told by Linux alone.
 */
final class MemoryWatch implements AutoCloseable {

    private static final Pattern SHARE = Pattern.compile("Pss:\\s+(\\d+) kB");
    private static final int KB = 1024;

    private final ProcessHandle first;
    private final Thread watching;
    private volatile long mostKb;
    private volatile int machines;
    private final StringBuilder marks = new StringBuilder();

    MemoryWatch(ProcessHandle first, long everyMs) {
        this.first = first;
        watching = new Thread(() -> watch(everyMs), "memory");
        watching.setDaemon(true);
        watching.start();
    }

    private void watch(long everyMs) {
        try {
            while (true) {
                look();
                Thread.sleep(everyMs);
            }
        } catch (InterruptedException over) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized long look() {
        List<ProcessHandle> all =
                Stream.concat(Stream.of(first), first.descendants()).toList();
        long kb = all.stream().mapToLong(MemoryWatch::shareKb).sum();
        if (kb > mostKb) {
            mostKb = kb;
            machines = all.size();
        }
        return kb;
    }

    private static long shareKb(ProcessHandle process) {
        try {
            Matcher share =
                    SHARE.matcher(Files.readString(Path.of("/proc", Long.toString(process.pid()), "smaps_rollup")));
            return share.find() ? Long.parseLong(share.group(1)) : 0;
        } catch (IOException gone) {
            return 0;
        }
    }

    /** Notes what they take now. */
    void mark(String when) {
        marks.append(String.format("memory %s: %d MB%n", when, look() / KB));
    }

    @Override
    public void close() {
        watching.interrupt();
    }

    @Override
    public String toString() {
        return mostKb == 0
                ? "memory: this system does not tell"
                : marks + String.format("memory at the highest: %d MB in %d processes", mostKb / KB, machines);
    }
}
