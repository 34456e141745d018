package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** No Java machine for snippets outlives its session or its host. */
@Timeout(600)
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
        Set<ProcessHandle> before = ProcessHandle.current().children().collect(Collectors.toSet());
        long pid;
        try (Session session = SharedSession.open()) {
            session.run("a", "1");
            pid = session.pid();
            assertTrue(ProcessHandle.of(pid).isPresent());
        }
        awaitEnd(pid);
        awaitNoMoreThan(before);
    }

    /** In a terminal Ctrl+C reaches the machines too. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void anInterruptOfAllEndsNoMachineAndTakesNothing() throws Exception {
        try (Session session = SharedSession.open()) {
            session.bind("double", "dragged", "2.5");
            session.run("a", "double mine = 3;");
            long pid = session.pid();
            for (ProcessHandle machine : ProcessHandle.current().children().toList()) {
                new ProcessBuilder("kill", "-INT", Long.toString(machine.pid()))
                        .start()
                        .waitFor();
            }
            assertEquals("5.5", SharedSession.value(session, "b", "dragged + mine"));
            assertEquals(pid, session.pid());
        }
    }

    /** Whoever ends the machine in use and the spare one takes nothing of what was declared. */
    @Test
    void whatWasDeclaredIsThereThoughBothMachinesAreKilled() throws Exception {
        Set<ProcessHandle> before = ProcessHandle.current().children().collect(Collectors.toSet());
        try (Session session = SharedSession.open()) {
            session.bind("double", "dragged", "2.5");
            session.run("a", "double mine = 3;");
            while (ownOf(before).size() < 2 || computing(ownOf(before))) {
                TimeUnit.MILLISECONDS.sleep(50);
            }
            ownOf(before).forEach(ProcessHandle::destroyForcibly);
            // Tells that the machine is gone.
            session.run("b", "1");
            assertEquals("5.5", SharedSession.value(session, "c", "dragged + mine"));
        }
    }

    /** Whether one of them is still being made ready. */
    private static boolean computing(List<ProcessHandle> machines) throws InterruptedException {
        List<?> before = machines.stream().map(AgentEndsTest::computed).toList();
        TimeUnit.MILLISECONDS.sleep(400);
        return !before.equals(machines.stream().map(AgentEndsTest::computed).toList());
    }

    private static Object computed(ProcessHandle machine) {
        return machine.info().totalCpuDuration();
    }

    private static List<ProcessHandle> ownOf(Set<ProcessHandle> before) {
        return ProcessHandle.current()
                .children()
                .filter(child -> child.isAlive() && !before.contains(child))
                .toList();
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
        // The machine in use and the spare one.
        while (host.toHandle().descendants().count() < 2) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        List<ProcessHandle> family = host.toHandle().descendants().toList();
        host.destroyForcibly().waitFor();
        awaitEnd(pid);
        for (ProcessHandle member : family) {
            awaitEnd(member.pid());
        }
    }

    /** Waits until no child is left but those of other tests; the time limit of the class ends a wait in vain. */
    private static void awaitNoMoreThan(Set<ProcessHandle> before) throws InterruptedException {
        while (ProcessHandle.current().children().anyMatch(child -> child.isAlive() && !before.contains(child))) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
    }

    private static void awaitEnd(long pid) throws InterruptedException {
        while (alive(pid)) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        assertFalse(alive(pid), "process " + pid + " lives on");
    }

    private static boolean alive(long pid) {
        return ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false);
    }
}
