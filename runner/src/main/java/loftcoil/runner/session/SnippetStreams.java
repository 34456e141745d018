package loftcoil.runner.session;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import loftcoil.runner.chart.ChartJson;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.chart.Plot;

/**
 * Where printed text and charts of snippets go. Standard output and standard error share one stream, so their order is
 * kept. A snippet may close or replace its streams; they are put back before the next piece.
 */
final class SnippetStreams {

    private static final int BUFFER = 8192;

    private PrintStream printed = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    private OutputStream printedRaw = OutputStream.nullOutputStream();
    private OutputStream charts = OutputStream.nullOutputStream();

    synchronized void printTo(OutputStream out) {
        printedRaw = new StaysOpen(new BufferedOutputStream(out, BUFFER));
        takeOver();
    }

    synchronized void chartsTo(OutputStream out) {
        charts = out;
        Plot.sendTo(this::send);
    }

    /** Makes the standard streams ours again, whatever a snippet did to them. */
    synchronized void takeOver() {
        if (System.out != printed || System.err != printed || printed.checkError()) {
            printed = new PrintStream(printedRaw, true, StandardCharsets.UTF_8);
            System.setOut(printed);
            System.setErr(printed);
            System.setIn(InputStream.nullInputStream());
        }
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
        try {
            charts.write((ChartJson.write(order) + "\n").getBytes(StandardCharsets.UTF_8));
            charts.flush();
        } catch (IOException e) {
            throw new IllegalStateException("The chart could not be sent.", e);
        }
    }

    /** Cannot be closed by a snippet. */
    private static final class StaysOpen extends FilterOutputStream {

        StaysOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
