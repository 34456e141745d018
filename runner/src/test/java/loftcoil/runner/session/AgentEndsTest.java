package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** No Java machine for snippets outlives its session or its host. */
@Timeout(120)
class AgentEndsTest {

    /** A host that runs an endless snippet, for being killed. */
    static final class Host {

        private Host() {}

        /** Prints the process number of its snippets' machine, then runs for ever. */
        public static void main(String[] args) {
            Session session = SharedSession.open();
            System.out.println(session.pid());
            session.run("a", "Thread t = new Thread(() -> { while (true) { } }); t.start();");
            session.run("b", "while (true) { try { while (true) { } } catch (Throwable t) { } }");
        }
    }

    @Test
    void closingTheSessionEndsItsMachines() throws Exception {
        long pid;
        try (Session session = SharedSession.open()) {
            session.run("a", "1");
            pid = session.pid();
            assertTrue(ProcessHandle.of(pid).isPresent());
        }
        awaitEnd(pid);
        assertEquals(0, children());
    }

    @Test
    void killingTheHostEndsItsMachines() throws Exception {
        String path =
                SnippetClassPath.find().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        Process host = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        path,
                        Host.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader out = new BufferedReader(new InputStreamReader(host.getInputStream(), StandardCharsets.UTF_8));
        long pid = Long.parseLong(out.readLine());
        assertTrue(ProcessHandle.of(pid).isPresent());
        TimeUnit.MILLISECONDS.sleep(500);
        var family = host.toHandle().descendants().toList();
        assertFalse(family.isEmpty());
        host.destroyForcibly().waitFor();
        awaitEnd(pid);
        for (ProcessHandle member : family) {
            awaitEnd(member.pid());
        }
    }

    private static long children() throws InterruptedException {
        for (int i = 0; i < 400; i++) {
            if (ProcessHandle.current().children().noneMatch(ProcessHandle::isAlive)) {
                return 0;
            }
            TimeUnit.MILLISECONDS.sleep(50);
        }
        return ProcessHandle.current().children().filter(ProcessHandle::isAlive).count();
    }

    private static void awaitEnd(long pid) throws InterruptedException {
        for (int i = 0; i < 400 && alive(pid); i++) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        assertFalse(alive(pid), "process " + pid + " lives on");
    }

    private static boolean alive(long pid) {
        return ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false);
    }
}
