package loftcoil.runner.session;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import loftcoil.runner.chart.ChartJson;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.chart.Plot;

/**
 * Where printed text and charts of snippets go. Standard output and standard error share one stream, so their order is
 * kept. A snippet may close or replace its streams; they are put back before the next piece. What belongs to an earlier
 * run is dropped.
 */
final class SnippetStreams {

    private static final int BUFFER = 8192;

    private PrintStream printed = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    private OutputStream target = OutputStream.nullOutputStream();
    private Printed printedRaw = new Printed(target);
    private final InheritableThreadLocal<Integer> startedIn = new InheritableThreadLocal<>();
    private volatile int run;
    private OutputStream charts = OutputStream.nullOutputStream();

    synchronized void printTo(OutputStream out) {
        target = out;
        renew();
    }

    private void renew() {
        printedRaw.detach();
        printedRaw = new Printed(new BufferedOutputStream(target, BUFFER));
        put();
    }

    synchronized void chartsTo(OutputStream out) {
        charts = out;
        Plot.sendTo(this::send);
    }

    /** Makes the standard streams ours again, whatever a snippet did to them. */
    synchronized void takeOver() {
        if (System.out != printed || System.err != printed || printed.checkError()) {
            put();
        }
    }

    private void put() {
        printed = new PrintStream(printedRaw, true, StandardCharsets.UTF_8);
        System.setOut(printed);
        System.setErr(printed);
        System.setIn(InputStream.nullInputStream());
    }

    /** Before a piece: its thread, and those it starts, belong to the run that is on. */
    void enter() {
        startedIn.set(run);
        takeOver();
    }

    /**
     * After a run: what its threads print and draw later is dropped.
     *
     * @param stopped true where it was ended from outside, perhaps in the middle of printing; what is left of that goes too
     */
    synchronized void endRun(boolean stopped) {
        run++;
        if (stopped) {
            renew();
        }
    }

    /** False for a thread that an earlier run has left behind. Workers that all runs share belong to each. */
    private boolean belongs() {
        Integer mine = startedIn.get();
        return mine == null
                || mine == run
                || (Thread.currentThread() instanceof ForkJoinWorkerThread worker
                        && worker.getPool() == ForkJoinPool.commonPool());
    }

    void flush() {
        try {
            printedRaw.flush();
        } catch (IOException e) {
            // The host is gone, and the agent with it in a moment.
            return;
        }
    }

    private synchronized void send(ChartOrder order) {
        if (!belongs()) {
            return;
        }
        try {
            charts.write((ChartJson.write(order) + "\n").getBytes(StandardCharsets.UTF_8));
            charts.flush();
        } catch (IOException e) {
            throw new IllegalStateException("The chart could not be sent.", e);
        }
    }

    /** Takes only what the run that is on prints, and cannot be closed by a snippet. */
    private final class Printed extends FilterOutputStream {

        private volatile boolean attached = true;

        Printed(OutputStream out) {
            super(out);
        }

        void detach() {
            attached = false;
        }

        @Override
        public void write(int b) throws IOException {
            if (attached && belongs()) {
                out.write(b);
            }
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            if (attached && belongs()) {
                out.write(bytes, from, length);
            }
        }

        @Override
        public void flush() throws IOException {
            if (attached) {
                out.flush();
            }
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
