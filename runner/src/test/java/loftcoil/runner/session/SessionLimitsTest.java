package loftcoil.runner.session;

import static loftcoil.runner.session.SharedSession.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(900)
class SessionLimitsTest {

    private Session session;

    @BeforeAll
    void open() {
        session = SharedSession.lentWithShortLimits();
    }

    @AfterAll
    void close() {
        session.close();
    }

    @BeforeEach
    void earlierWork() {
        earlierWork(session);
    }

    private static void earlierWork(Session session) {
        session.forget();
        session.bind("double", "dragged", "1.5");
        session.run("one", "double x = 3;\ndouble twice(double v) { return 2 * v; }");
        session.run("two", "double y = twice(x);\nint[] kept = {1, 2};\nkept[1] = 9;");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TIME   | while (true) { }",
                "EXIT   | Runtime.getRuntime().halt(0);",
                "MEMORY | var all = new ArrayList<double[]>(); while (true) { all.add(new double[1_000_000]); }",
                "OUTPUT | while (true) { System.out.println(\"again and again and again\"); }",
                "OUTPUT | while (true) { try { System.err.print(\"over and over\"); } catch (Throwable t) { } }"
            })
    void whatIsEndedFromOutsideLeavesTheEarlierWork(Outcome.Cause cause, String source) {
        endsAndLeavesTheEarlierWork(session, cause, source);
    }

    /** Such as learners have it: another machine stands ready. */
    @Test
    void theSpareMachineHasTheEarlierWorkToo() {
        try (Session ownMachines = SharedSession.open()) {
            earlierWork(ownMachines);
            endsAndLeavesTheEarlierWork(ownMachines, Outcome.Cause.EXIT, "System.exit(3);");
        }
    }

    private static void endsAndLeavesTheEarlierWork(Session session, Outcome.Cause cause, String source) {
        Outcome outcome = session.run("bad", "System.out.println(\"begun\");\n" + source);
        Outcome.Stopped stopped = assertInstanceOf(Outcome.Stopped.class, outcome);
        assertEquals(cause, stopped.cause());
        assertTrue(
                stopped.trace().printed().startsWith("begun\n"), stopped.trace().printed());
        assertEquals("[3.0, 6.0, 9, 1.5]", value(session, "three", "List.of(x, y, kept[1], dragged)"));
        assertEquals("", session.run("four", "double z = twice(y);").trace().printed());
    }

    /** Both at once, since all that this needs is the time. */
    @Test
    void whatSleepsIsEndedByTheClock() {
        Duration clock = Duration.ofSeconds(10);
        List<CompletableFuture<Void>> sleepers = Stream.of(
                        "Thread.sleep(1_000_000);",
                        "while (true) { try { Thread.sleep(50); } catch (Throwable t) { } }")
                .map(source -> CompletableFuture.runAsync(() -> {
                    try (Session sleeping = SharedSession.open(new Limits(clock, clock, 64, 10_000, 3))) {
                        earlierWork(sleeping);
                        endsAndLeavesTheEarlierWork(sleeping, Outcome.Cause.WAIT, source);
                    }
                }))
                .toList();
        sleepers.forEach(CompletableFuture::join);
    }

    @Test
    void aFloodIsCutAtTheLimit() {
        Outcome outcome = session.run("a", "for (int i = 0; i < 5000; i++) { System.out.print(\"123456789 \"); }\n1");
        assertInstanceOf(Outcome.Done.class, outcome);
        assertEquals(10_000, outcome.trace().printed().length());
        assertTrue(outcome.trace().printedCut());
        assertFalse(session.run("b", "System.out.print(\"x\")").trace().printedCut());
    }

    @Test
    void theLearnerCanStopAtAnyTime() throws Exception {
        CompletableFuture<Outcome> run =
                CompletableFuture.supplyAsync(() -> session.run("a", "System.out.println(1); while (true) { }"));
        while (!run.isDone()) {
            session.stop();
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertEquals(
                Outcome.Cause.ASKED,
                assertInstanceOf(Outcome.Stopped.class, run.get()).cause());
        assertEquals("3.0", value(session, "b", "x"));
    }

    @Test
    void whatWasStoppedBeforeItsTurnDoesNotRun() {
        long asked = session.stops();
        session.stop();
        Outcome outcome = session.run("a", "while (true) { }", asked);
        assertEquals(
                Outcome.Cause.ASKED,
                assertInstanceOf(Outcome.Stopped.class, outcome).cause());
        assertEquals("3.0", value(session, "b", "x"));
    }

    @Test
    void completionDoesNotWaitForARun() throws Exception {
        CompletableFuture<Outcome> run = CompletableFuture.supplyAsync(() -> session.run("a", "while (true) { }"));
        while (!session.complete("dragg", 5).isEmpty()) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertFalse(run.isDone());
        while (!run.isDone()) {
            session.stop();
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertFalse(session.complete("dragg", 5).isEmpty());
    }

    @Test
    void endlessRecursionIsThrownAndKeepsTheMachine() {
        long before = session.pid();
        session.run("r", "int deep(int n) {\n  return deep(n + 1) + 1;\n}");
        Outcome.Threw threw = assertInstanceOf(Outcome.Threw.class, session.run("a", "deep(1)"));
        assertEquals("StackOverflowError", threw.exception());
        assertEquals(before, session.pid());
    }

    @Test
    void manyThreadsLeftBehindEndTheMachine() {
        long before = session.pid();
        session.run(
                "t",
                """
                for (int i = 0; i < 40; i++) {
                  Thread t = new Thread(() -> { try { Thread.sleep(10_000_000); } catch (Exception e) { } });
                  t.setDaemon(true);
                  t.start();
                }
                """);
        assertNotEquals(before, session.pid());
        assertEquals("3.0", value(session, "b", "x"));
    }

    @Test
    void aPieceThatEndsTheMachineWhenReplayedIsLeftOut(@TempDir Path folder) throws Exception {
        Path been = folder.resolve("been");
        // Harmless while the file is missing, deadly once it is there.
        session.run("trap", "if (java.nio.file.Files.exists(java.nio.file.Path.of(\"" + been + "\"))) System.exit(1);");
        session.run("after", "int after = 5;");
        Files.createFile(been);
        session.run("exit", "System.exit(0)");
        assertEquals("[3.0, 5]", value(session, "b", "List.of(x, after)"));
    }

    @Test
    void anEditedStepReplaysWithItsLatestText() {
        session.run("one", "double x = 4;\ndouble twice(double v) { return 2 * v; }");
        session.run("exit", "System.exit(0)");
        assertEquals("[4.0, 8.0]", value(session, "b", "List.of(x, y)"));
    }
}
