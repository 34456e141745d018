package loftcoil.runner.session;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.chart.ChartJson;
import loftcoil.runner.chart.ChartOrder;

/**
 * Printed text and charts as they come in, within the limits. Between runs everything is dropped: it can only come from
 * threads a snippet left behind.
 */
final class SnippetOutput {

    /** Longest form of one UTF-16 unit in UTF-8. */
    private static final int BYTES_A_CHAR = 3;

    private static final int LONGEST_CHART = 8_000_000;

    /** Bytes of a character in UTF-8 after its first begin with the bits 10. */
    private static final int CONTINUES_MASK = 0xC0;

    private static final int CONTINUES = 0x80;

    private final Limits limits;
    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final ByteArrayOutputStream chartLine = new ByteArrayOutputStream();
    private final List<ChartOrder> charts = new ArrayList<>();
    private long printedBytes;
    private long printedChars;
    private int chartsShown;
    private boolean open;
    private Runnable onFlood = () -> {};

    SnippetOutput(Limits limits) {
        this.limits = limits;
    }

    /** Forgets what came before and takes what comes now. */
    synchronized void open(Runnable whenFlooded) {
        printed.reset();
        charts.clear();
        // The start of a line that a stopped run did not end.
        chartLine.reset();
        printedBytes = 0;
        printedChars = 0;
        chartsShown = 0;
        onFlood = whenFlooded;
        open = true;
    }

    synchronized void close() {
        open = false;
    }

    /** A place to come back to with {@link #backTo}. */
    synchronized Place place() {
        return new Place(printed.size(), printedBytes, printedChars, charts.size(), chartsShown);
    }

    /** Drops what came after a place. */
    synchronized void backTo(Place place) {
        byte[] kept = printed.toByteArray();
        printed.reset();
        printed.write(kept, 0, place.printedKept());
        printedBytes = place.printedBytes();
        printedChars = place.printedChars();
        charts.subList(place.charts(), charts.size()).clear();
        chartsShown = place.chartsShown();
    }

    synchronized Outcome.Trace trace(long millis) {
        String text = printed.toString(StandardCharsets.UTF_8);
        if (text.length() > limits.printedChars()) {
            text = text.substring(0, limits.printedChars());
        }
        long missing = Math.max(0, printedChars - text.codePointCount(0, text.length()));
        return new Outcome.Trace(text, missing, List.copyOf(charts), chartsShown - charts.size(), millis);
    }

    private synchronized void print(byte[] bytes, int from, int length) {
        if (!open) {
            return;
        }
        int room = limits.printedChars() * BYTES_A_CHAR - printed.size();
        printed.write(bytes, from, Math.min(room, length));
        long flood = (long) limits.printedChars() * Limits.FLOOD;
        boolean before = printedBytes > flood;
        printedBytes += length;
        for (int i = from; i < from + length; i++) {
            printedChars += (bytes[i] & CONTINUES_MASK) == CONTINUES ? 0 : 1;
        }
        if (!before && printedBytes > flood) {
            onFlood.run();
        }
    }

    private synchronized void chart(byte[] bytes, int from, int length) {
        for (int i = from; i < from + length; i++) {
            if (bytes[i] != '\n') {
                if (chartLine.size() < LONGEST_CHART) {
                    chartLine.write(bytes[i]);
                }
                continue;
            }
            if (open) {
                chartsShown++;
                keepChart();
            }
            chartLine.reset();
        }
    }

    private void keepChart() {
        if (charts.size() >= limits.charts() || chartLine.size() >= LONGEST_CHART) {
            return;
        }
        try {
            charts.add(ChartJson.read(chartLine.toString(StandardCharsets.UTF_8)));
        } catch (IllegalArgumentException notOurs) {
            // Counted as missing: whatever a snippet sends must not end the connection.
            return;
        }
    }

    OutputStream printedStream() {
        return new Taking(this::print);
    }

    OutputStream chartStream() {
        return new Taking(this::chart);
    }

    /**
     * How far things had come.
     *
     * @param printedKept bytes kept
     * @param printedBytes bytes printed
     * @param printedChars characters printed
     * @param charts charts kept
     * @param chartsShown charts shown
     */
    record Place(int printedKept, long printedBytes, long printedChars, int charts, int chartsShown) {}

    private interface Taker {
        void take(byte[] bytes, int from, int length);
    }

    private static final class Taking extends OutputStream {

        private final Taker taker;

        Taking(Taker taker) {
            this.taker = taker;
        }

        @Override
        public void write(int b) {
            taker.take(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            taker.take(bytes, from, length);
        }
    }
}
