package loftcoil.runner.session;

import static loftcoil.runner.session.SharedSession.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Java that breaks compilers and streams is told plainly, and what ran before and comes after is whole. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(900)
class HostileSnippetsTest {

    private static final String LONG_TEXT = "\"" + "a".repeat(70_000) + "\"";

    private Session session;

    @BeforeAll
    void open() {
        // Whole machines are used again from test to test, so that what one leaves behind would show in the next.
        session = SharedSession.lentWithShortLimits();
    }

    @AfterAll
    void close() {
        session.close();
    }

    @BeforeEach
    void earlierWork() {
        session.forget();
        session.run("earlier", "int kept = 4;");
    }

    private Outcome.Problem problem(String source) {
        return assertInstanceOf(Outcome.NotJava.class, session.run("bad", source))
                .problems()
                .get(0);
    }

    private String printed(String source) {
        return session.run("print", source).trace().printed();
    }

    private void assertWhole() {
        assertEquals("4", value(session, "next", "kept"));
        assertEquals("5", value(session, "last", "int more = kept + 1;\nmore"));
        assertEquals("hi\n", printed("System.out.println(\"hi\");"));
    }

    @Test
    void aTextTooLongForJavaIsToldAndNotKept() {
        Outcome.Problem problem = problem("int before = 1;\n\nString text = " + LONG_TEXT + ";");
        assertTrue(problem.words().contains("too long a text for Java"), problem.words());
        assertEquals(3, problem.line());
        assertWhole();
        assertEquals("1", value(session, "next", "before"));
        session.run("exit", "System.exit(0);");
        assertWhole();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"%s", "System.out.println(%s.length());", "String f() { return %s; }", "{ String s = %s; }"})
    void soIsOneAnywhereInAPiece(String source) {
        String words = problem(String.format(source, LONG_TEXT)).words();
        assertTrue(words.contains("too long a text for Java"), words);
        assertWhole();
    }

    @Test
    void aPieceTooLongForJavaIsTold() {
        String words = problem("int[] many = {" + "1,".repeat(20_000) + "2};").words();
        assertTrue(words.contains("too long a piece for Java"), words);
        assertWhole();
    }

    @Test
    void aReckonerStandsATooLongText() {
        Reckoner reckoner = new Reckoner(session);
        RefusedException refused = assertThrows(RefusedException.class, () -> reckoner.number(LONG_TEXT + ".length()"));
        assertTrue(refused.getMessage().contains("too long a text for Java"), refused.getMessage());
        assertEquals(8, reckoner.number("kept * 2"));
    }

    @Test
    void aSecurityManagerIsRefused() {
        Outcome outcome = session.run(
                "bad",
                """
                System.setSecurityManager(new SecurityManager() {
                  public void checkPermission(java.security.Permission p) { throw new SecurityException(); }
                });
                """);
        assertEquals(
                "UnsupportedOperationException",
                assertInstanceOf(Outcome.Threw.class, outcome).exception());
        assertWhole();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Thread.currentThread().stop();",
                "new Object() { int v() { Thread.currentThread().stop(); return 1; } }.v()",
                "int v = new Object() { int v() { Thread.currentThread().stop(); return 1; } }.v();"
            })
    void aPieceThatDoesNotComeToItsEndIsNoSuccess(String source) {
        for (int i = 0; i < 2; i++) {
            // Up to Java 19 it ends its own thread without an exception; from 20 on Java refuses that by one.
            Outcome outcome = session.run("bad", source);
            assertFalse(outcome instanceof Outcome.Done, outcome.toString());
        }
        assertWhole();
    }

    @Test
    void aValueIsWantedWhereANameIsOnlyDeclared() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> new Reckoner(session).number("double drive;"));
        assertTrue(refused.getMessage().contains("has no value"), refused.getMessage());
        assertEquals(3, new Reckoner(session).number("double drive = 3;"));
    }

    @Test
    void theRestOfAStoppedTextDoesNotShowInTheNext() {
        Outcome outcome = session.run("flood", "System.out.print(\"x\".repeat(10_000_000));");
        assertEquals(
                Outcome.Cause.OUTPUT,
                assertInstanceOf(Outcome.Stopped.class, outcome).cause());
        assertEquals("hello\n", printed("System.out.println(\"hello\");"));
        assertEquals("again", printed("System.out.print(\"again\");"));
    }

    @Test
    void aThreadOfAnEarlierSnippetPrintsAndDrawsNothingUnderALaterOne() {
        session.run(
                "late",
                """
                Thread late = new Thread(() -> {
                  while (true) {
                    System.out.println("LATE");
                    plot("late").across("x", "m", new double[] {0, 1}).curve("c", new double[] {0, 1}).show();
                    try { Thread.sleep(1); } catch (InterruptedException e) { return; }
                  }
                });
                late.setDaemon(true);
                late.start();
                """);
        Outcome outcome = session.run("next", "System.out.print(\"a\"); Thread.sleep(300); System.out.print(\"b\");");
        assertEquals("ab", outcome.trace().printed());
        assertEquals(List.of(), outcome.trace().charts());
        session.run("end", "late.interrupt();");
    }

    @Test
    void threadsPrintUnderTheirOwnSnippet() {
        assertEquals(
                "in thread\n",
                printed("Thread own = new Thread(() -> System.out.println(\"in thread\")); own.start(); own.join();"));
        String parallel = "java.util.stream.IntStream.range(0, 200).parallel().forEach(i -> System.out.println(i));";
        for (int i = 0; i < 3; i++) {
            assertEquals(200, printed(parallel + " // " + i).lines().count());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {400, 3000})
    void bracketsTooDeepForJavaAreTold(int depth) {
        String source = "int deep = " + "(".repeat(depth) + "1" + ")".repeat(depth) + ";";
        assertTrue(problem(source).words().contains("too deeply nested for Java"));
        assertWhole();
    }

    @Test
    void aSumTooLongForJavaIsTold() {
        Outcome.Problem problem = problem("int before = 1;\nint sum = 1" + "+1".repeat(20_000) + ";");
        assertTrue(problem.words().contains("too deeply nested for Java"), problem.words());
        assertEquals(2, problem.line());
        assertWhole();
        assertEquals("1", value(session, "next", "before"));
        assertEquals("501", value(session, "sum", "1" + "+1".repeat(500)));
        assertEquals("7", value(session, "brackets", "(".repeat(200) + "7" + ")".repeat(200)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"(", "- "})
    void completingDeepJavaAnswers(String piece) {
        String source = "var v = " + piece.repeat(20_000);
        assertEquals(
                List.of(),
                session.complete(source + "kep", source.length() + 3).stream()
                        .filter(suggestion -> suggestion.text().isEmpty())
                        .toList());
        assertWhole();
    }

    @Test
    void aLongValueSaysHowMuchIsMissing() {
        String text = value(session, "a", "\"y\".repeat(100_000)");
        assertTrue(text.matches("y{19999}\\n… the rest is not shown: 80001 more characters"), text.substring(19_990));
        String array = value(session, "b", "new int[100_000]");
        assertTrue(array.startsWith("int[100000] { 0, 0"), array.substring(0, 20));
        assertTrue(array.endsWith(" more characters"), array.substring(array.length() - 60));
        String lines = value(session, "c", "\"ab\\n\".repeat(30_000)");
        assertTrue(lines.startsWith("ab\nab\n"), lines.substring(0, 9));
        assertEquals("a\0" + "7", value(session, "d", "new StringBuilder(\"a\\0\" + 7)"));
    }

    @Test
    void whatIsCutIsCounted() {
        Outcome outcome = session.run(
                "many",
                """
                for (int i = 0; i < 10; i++) {
                  plot("p" + i).across("x", "m", new double[] {0, 1}).curve("c", new double[] {0, 1}).show();
                }
                System.out.print("°".repeat(12_000));
                """);
        assertEquals(3, outcome.trace().charts().size());
        assertEquals(7, outcome.trace().chartsMissing());
        assertEquals(10_000, outcome.trace().printed().length());
        assertEquals(2_000, outcome.trace().printedMissing());
        assertEquals(0, session.run("few", "1").trace().chartsMissing());
    }

    @Test
    void snippetsNeedNoScreen() {
        String source =
                """
                var image = new java.awt.image.BufferedImage(9, 9, 1);
                image.createGraphics().drawString("a", 1, 8);
                java.awt.GraphicsEnvironment.isHeadless() && System.getenv("DISPLAY") == null
                """;
        assertEquals("true", value(session, "draw", source));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nextLine()", "nextInt()", "next()"})
    void nothingCanBeTypedIn(String call) {
        Outcome.Threw threw = assertInstanceOf(
                Outcome.Threw.class, session.run("type", "var in = new Scanner(System.in);\nin." + call));
        assertTrue(threw.wantsTyping(), threw.toString());
        assertEquals(2, threw.line());
        assertFalse(assertInstanceOf(Outcome.Threw.class, session.run("none", "List.of().iterator().next()"))
                .wantsTyping());
    }
}
