package loftcoil.runner.session;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import jdk.jshell.execution.Util;

/**
 * Main class of the Java machine that snippets run in. It calls back to its host twice over the loopback: once for the
 * work, once for the reins, on which a byte means "stop now" and the end of the stream means that the host is gone. It
 * then ends at once, so that no snippet outlives its host.
 */
public final class SnippetAgent {

    /** First byte of the connection that carries the work. */
    static final int WORK = 'w';

    /** First byte of the connection that carries the reins. */
    static final int REINS = 'r';

    /** Name of the stream of printed text. */
    static final String PRINTED = "printed";

    /** Name of the stream of charts, one JSON object a line. */
    static final String CHARTS = "charts";

    private SnippetAgent() {}

    /**
     * Serves one host until it goes away. Standard input gives one line: port and secret.
     *
     * @throws IOException where the host cannot be reached
     */
    public static void main(String[] args) throws IOException {
        String told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII)).readLine();
        if (told == null) {
            return;
        }
        int space = told.indexOf(' ');
        String secret = told.substring(space + 1);
        System.setIn(InputStream.nullInputStream());
        int port = Integer.parseInt(told.substring(0, space));
        SnippetStreams streams = new SnippetStreams();
        SnippetControl control = new SnippetControl(streams);
        try (Socket reins = call(port, secret, REINS);
                Socket work = call(port, secret, WORK)) {
            Thread holder = new Thread(() -> obey(reins, control, streams), "reins");
            holder.setDaemon(true);
            holder.start();
            Util.forwardExecutionControlAndIO(
                    control,
                    work.getInputStream(),
                    work.getOutputStream(),
                    Map.of(PRINTED, streams::printTo, CHARTS, streams::chartsTo),
                    Map.of());
        } finally {
            Runtime.getRuntime().halt(0);
        }
    }

    private static Socket call(int port, String secret, int purpose) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        OutputStream out = socket.getOutputStream();
        byte[] words = secret.getBytes(StandardCharsets.US_ASCII);
        byte[] hello = new byte[words.length + 1];
        hello[0] = (byte) purpose;
        System.arraycopy(words, 0, hello, 1, words.length);
        out.write(hello);
        out.flush();
        return socket;
    }

    private static void obey(Socket reins, SnippetControl control, SnippetStreams streams) {
        try {
            InputStream in = reins.getInputStream();
            while (in.read() >= 0) {
                control.stop();
                streams.flush();
            }
        } catch (Throwable e) {
            // Whatever went wrong here, an agent without reins must not go on.
            Runtime.getRuntime().halt(1);
        }
        Runtime.getRuntime().halt(0);
    }
}
