package loftcoil.runner.session;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One Java machine for snippets, started and connected. */
final class AgentProcess implements AutoCloseable {

    /** A slow laptop under load needs seconds to start a JVM; this only bounds a hang. */
    private static final int START_MS = 30_000;

    private static final Set<String> SCREENS = Set.of("DISPLAY", "WAYLAND_DISPLAY");

    private static final int ACCEPT_MS = 200;
    private static final int SECRET_BYTES = 32;

    /** Heap a machine starts with, and the part of it for what is new. */
    private static final int START_MB = 24;

    private static final int NEW_MB = 16;

    private static final Path SHELL = Path.of("/bin/sh");

    /**
     * Ctrl+C in a terminal is told to all that was started from it, not to the host alone, which then asks the running piece to stop. A
     * machine that took it would end, and the spare one with it; what a shell has set to be ignored, Java ignores too.
     */
    private static final List<String> DEAF_TO_CTRL_C =
            List.of(SHELL.toString(), "-c", "trap '' INT; exec \"$0\" \"$@\"");

    private final Process process;
    private final Socket work;
    private final Socket reins;

    private AgentProcess(Process process, Socket work, Socket reins) {
        this.process = process;
        this.work = work;
        this.reins = reins;
    }

    /**
     * Starts the machine and waits until it has called back.
     *
     * @throws IOException where it cannot be started or does not call
     */
    static AgentProcess start(List<Path> classPath, int memoryMb) throws IOException {
        byte[] random = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(random);
        String secret = HexFormat.of().formatHex(random);
        try (ServerSocket door = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
            ProcessBuilder builder = new ProcessBuilder(command(classPath, memoryMb))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD);
            // Snippets draw without a screen; one that is named but gone could only get in their way.
            builder.environment().keySet().removeAll(SCREENS);
            Process process = builder.start();
            try (OutputStream in = process.getOutputStream()) {
                // By standard input, not as an argument: arguments can be read by every user of the machine.
                in.write((door.getLocalPort() + " " + secret + "\n").getBytes(StandardCharsets.US_ASCII));
            }
            try {
                return connect(door, process, secret.getBytes(StandardCharsets.US_ASCII));
            } catch (IOException e) {
                process.destroyForcibly();
                throw e;
            }
        }
    }

    private static List<String> command(List<Path> classPath, int memoryMb) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String path = classPath.stream().map(SharedClasses::name).collect(Collectors.joining(File.pathSeparator));
        List<String> command = new ArrayList<>(Files.isExecutable(SHELL) ? DEAF_TO_CTRL_C : List.of());
        command.add(java);
        command.addAll(SharedClasses.options());
        command.addAll(List.of(
                "-Xmx" + memoryMb + "m",
                // Most of what a snippet makes is gone a moment later: a small place for it is cleared cheaply, and no
                // more is taken.
                "-Xms" + START_MB + "m",
                "-XX:MaxNewSize=" + NEW_MB + "m",
                "-XX:MinHeapFreeRatio=10",
                "-XX:MaxHeapFreeRatio=25",
                "-XX:-ShrinkHeapInSteps",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Djava.awt.headless=true",
                // One that forbids everything would forbid the machine to answer.
                "-Djava.security.manager=disallow",
                "-Dfile.encoding=UTF-8",
                "-cp",
                path,
                SnippetAgent.class.getName()));
        return command;
    }

    private static AgentProcess connect(ServerSocket door, Process process, byte[] secret) throws IOException {
        door.setSoTimeout(ACCEPT_MS);
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(START_MS);
        Socket work = null;
        Socket reins = null;
        while (work == null || reins == null) {
            if (!process.isAlive()) {
                throw new IOException("the Java machine for snippets ended at once with status " + process.exitValue());
            }
            if (System.nanoTime() > until) {
                throw new IOException("the Java machine for snippets did not start within " + START_MS / 1000 + " s");
            }
            Socket caller = accept(door);
            int purpose = caller == null ? -1 : greeting(caller, secret);
            if (purpose == SnippetAgent.WORK) {
                work = caller;
            } else if (purpose == SnippetAgent.REINS) {
                reins = caller;
            } else if (caller != null) {
                caller.close();
            }
        }
        return new AgentProcess(process, work, reins);
    }

    private static @Nullable Socket accept(ServerSocket door) throws IOException {
        try {
            Socket caller = door.accept();
            caller.setTcpNoDelay(true);
            return caller;
        } catch (SocketTimeoutException e) {
            return null;
        }
    }

    /** What the caller is for, or -1 where it does not know the secret. */
    private static int greeting(Socket caller, byte[] secret) throws IOException {
        caller.setSoTimeout(START_MS / 10);
        try {
            InputStream in = caller.getInputStream();
            int purpose = in.read();
            byte[] said = in.readNBytes(secret.length);
            caller.setSoTimeout(0);
            return MessageDigest.isEqual(secret, said) ? purpose : -1;
        } catch (SocketTimeoutException e) {
            return -1;
        }
    }

    InputStream in() throws IOException {
        return work.getInputStream();
    }

    OutputStream out() throws IOException {
        return work.getOutputStream();
    }

    /** The process number, for those who watch over it. */
    long pid() {
        return process.pid();
    }

    /** Processor time it has taken since it started; empty where this system does not tell. */
    Optional<Duration> computed() {
        return process.info().totalCpuDuration();
    }

    /** Asks the running piece to stop. */
    void pull() {
        try {
            OutputStream out = reins.getOutputStream();
            out.write('s');
            out.flush();
        } catch (IOException e) {
            // It has ended already: nothing is left to stop.
            return;
        }
    }

    /** Ends the machine at once. */
    @Override
    public void close() {
        process.destroyForcibly();
        shut(work);
        shut(reins);
    }

    private static void shut(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // A socket that cannot be closed is closed with its process.
            return;
        }
    }
}
