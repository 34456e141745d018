package loftcoil.runner.session;

import static loftcoil.runner.session.SharedSession.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(900)
class SessionTest {

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
    void forget() {
        session.forget();
    }

    @Test
    void theLastValueIsShownWithItsType() {
        Outcome.Done done = assertInstanceOf(Outcome.Done.class, session.run("a", "double x = 3;\nx / 7"));
        assertEquals("0.42857142857142855", done.value());
        assertEquals("double", done.type());
    }

    @Test
    void textIsShownWithoutItsQuotes() {
        assertEquals("a \"b\"\nc", value(session, "a", "\"a \\\"b\\\"\\nc\""));
    }

    @Test
    void aStatementHasNoValue() {
        Outcome.Done done = assertInstanceOf(Outcome.Done.class, session.run("a", "int x = 1; x++;\nif (x > 1) { }"));
        assertEquals("", done.value());
        assertEquals("", done.type());
    }

    @Test
    void aNameGivenNothingHasNoValue() {
        Outcome.Done done = assertInstanceOf(Outcome.Done.class, session.run("a", "double x;"));
        assertEquals("", done.value() + done.type());
        assertEquals("0.0", value(session, "b", "x"));
    }

    @Test
    void nothingAndCommentsAloneRun() {
        assertEquals("", value(session, "a", ""));
        assertEquals("", value(session, "a", "  // only words\n/* more */ ;;\n"));
    }

    @Test
    void everyPieceRunsAndCommentsMayStandAnywhere() {
        assertEquals(
                "7", value(session, "a", "int a = 1; int b = 2; // two\n/* three */ int c = 4;\na + b + c // all"));
    }

    @Test
    void printedTextKeepsTheOrderOfBothStreams() {
        Outcome outcome = session.run(
                "a", "System.out.print(\"one \"); System.err.print(\"two \"); System.out.println(\"3 °C ✓\");");
        assertEquals("one two 3 °C ✓\n", outcome.trace().printed());
    }

    @Test
    void stepsShareNamesAndMayDeclareThemAgain() {
        session.run("a", "double height = 2;");
        session.run("b", "double twice() { return 2 * height; }");
        assertEquals("4.0", value(session, "c", "twice()"));
        session.run("a", "double height = 5;");
        assertEquals("10.0", value(session, "c", "twice()"));
        session.run("a", "String height = \"tall\";");
        assertEquals("tall", value(session, "c", "height"));
    }

    @Test
    void methodsMayCallLaterOnesOfTheSameSnippet() {
        assertEquals(
                "6.0",
                value(
                        session,
                        "a",
                        "double f(double v) { return g(v) + 1; }\ndouble g(double v) { return v * 2; }\nf(2.5)"));
    }

    @Test
    void runningAStepAgainStartsItsVariablesAfresh() {
        String source = "double sum;\nfor (int i = 0; i < 3; i++) { sum += i; }\nsum";
        assertEquals("3.0", value(session, "a", source));
        assertEquals("3.0", value(session, "a", source));
        assertEquals("3.0", value(session, "a", source));
    }

    @Test
    void aBoundValueIsSeenByTheNextRunWithoutDeclaringItAnew() {
        String source = "double half = tankBaseM / 2;\nhalf + tankBaseM";
        for (double at : new double[] {2, -1, 0.05, 3.5e-2, 7}) {
            session.bind("double", "tankBaseM", "" + at);
            assertEquals("" + (at / 2 + at), value(session, "a", source));
        }
    }

    @Test
    void aBoundValueMayBeAnyExpressionAndChangeItsType() {
        session.bind("double", "x", "1.0 / 4");
        assertEquals("0.25", value(session, "a", "x"));
        session.bind("double", "x", "0.75");
        assertEquals("0.75", value(session, "a", "x"));
        session.bind("String", "x", "\"now text\"");
        assertEquals("now text", value(session, "a", "x"));
        session.bind("List<Integer>", "x", "List.of(1, 2)");
        assertEquals("[1, 2]", value(session, "a", "x"));
        assertThrows(SessionException.class, () -> session.bind("double", "x", "no such thing"));
    }

    @Test
    void aNameThatWasChangedIsNotAnsweredWithItsOldValue() {
        session.run("a", "double hotC = 90;\nhotC + 1");
        Outcome.NotJava problem =
                assertInstanceOf(Outcome.NotJava.class, session.run("a", "double hotc = 60;\nhotC + 1"));
        assertTrue(problem.problems().get(0).words().contains("hotc"), problem.toString());
        assertInstanceOf(Outcome.NotJava.class, session.run("b", "hotC"));
    }

    @Test
    void aNameGivenUpStandsAgainAsAnotherStepHasIt() {
        session.run("a", "double x = 1;");
        session.run("b", "double x = 2;");
        session.run("b", "double y = x;");
        assertEquals("1.0", value(session, "c", "x"));
        assertEquals("1.0", value(session, "c", "y"));
    }

    @Test
    void javaThatCannotBeReadGivesNothingUp() {
        session.run("a", "double x = 1;\ndouble z = 3;");
        assertInstanceOf(Outcome.NotJava.class, session.run("a", "double w = ;\ndouble x = 1;"));
        assertEquals("1.0", value(session, "b", "x"));
        assertInstanceOf(Outcome.NotJava.class, session.run("b", "z"));
    }

    @Test
    void aQuickRerunSeesWhatChangedBetween() {
        session.run("a", "double x = 2;");
        assertEquals("4.0", value(session, "b", "x * 2"));
        session.run("a", "double x = 3;");
        assertEquals("6.0", value(session, "b", "x * 2"));
        session.run("c", "x = 10;");
        assertEquals("20.0", value(session, "b", "x * 2"));
        session.run("d", "String x = \"a\";");
        assertInstanceOf(Outcome.NotJava.class, session.run("b", "x * 2"));
    }

    @Test
    void aQuickRerunSeesANameDeclaredByAReckoner() {
        session.run("a", "double x = 2;");
        assertEquals("4.0", value(session, "b", "x * 2"));
        assertEquals(7, new Reckoner(session).number("double x = 7; x"));
        assertEquals("14.0", value(session, "b", "x * 2"));
    }

    @Test
    void aQuickRerunThatThrowsSaysWhere() {
        session.bind("double", "d", "2");
        String source =
                "System.out.print(\"before\");\n\nint[] three = new int[3];\nthree[(int) d] = 1;\nthree[(int) d]";
        assertEquals("1", value(session, "a", source));
        session.bind("double", "d", "1");
        assertEquals("1", value(session, "a", source));
        session.bind("double", "d", "8");
        Outcome.Threw threw = assertInstanceOf(Outcome.Threw.class, session.run("a", source));
        assertEquals("ArrayIndexOutOfBoundsException", threw.exception());
        assertEquals(4, threw.line());
        assertEquals("before", threw.trace().printed());
    }

    @Test
    void exceptionsNameTheLineOfTheLearner() {
        session.run("f", "double inverse(int v) {\n  return 1 / v;\n}");
        Outcome.Threw threw = assertInstanceOf(
                Outcome.Threw.class, session.run("a", "// first\nint zero = 0;\n\ndouble q =\n   inverse(zero);"));
        assertEquals("ArithmeticException", threw.exception());
        assertEquals("/ by zero", threw.message());
        assertEquals(5, threw.line());
    }

    @Test
    void aRefusalOfTheEngineShowsItsFaultLine() {
        Outcome.Threw threw = assertInstanceOf(Outcome.Threw.class, session.run("a", "steps(0, 1, 0)"));
        assertEquals("RefusedException", threw.exception());
        assertEquals("steps.by: 0.0; allowed: above 0 (the step goes from the smaller to the larger)", threw.message());
        assertEquals(1, threw.line());
    }

    @Test
    void chartsComeInOrderAndNoMoreThanTheLimit() {
        String source =
                """
                for (int i = 0; i < 5; i++) {
                  plot("chart " + i).across("x", "m", new double[] {0, 1}).curve("c", new double[] {i, Double.NaN}).show();
                }
                """;
        Outcome outcome = session.run("a", source);
        assertEquals(
                List.of("chart 0", "chart 1", "chart 2"),
                outcome.trace().charts().stream().map(chart -> chart.title()).toList());
        assertEquals(
                List.of(2.0, Double.NaN),
                outcome.trace().charts().get(2).curves().get(0).ys());
    }

    @Test
    void spoiltStreamsAreWholeAgainInTheNextPiece() {
        session.run("a", "System.out.close(); System.setOut(null); System.err.close(); System.setErr(null);");
        assertEquals(
                "still here",
                session.run("b", "System.out.print(\"still here\");").trace().printed());
    }

    @Test
    void readingFromTheKeyboardEndsAtOnce() {
        assertEquals("-1", value(session, "a", "System.in.read()"));
    }

    @Test
    void forgettingLeavesOnlyThePreludeInAnotherMachine() {
        try (Session own = SharedSession.open()) {
            own.run("a", "int gone = 1;");
            long pid = own.pid();
            own.forget();
            assertInstanceOf(Outcome.NotJava.class, own.run("b", "gone"));
            assertEquals("2.0", value(own, "b", "sqrt(4)"));
            assertNotEquals(pid, own.pid());
        }
    }

    @Test
    void aReckonerGivesExactNumbersAndLeavesNothing() {
        session.run("a", "double x = 0.1;");
        Reckoner reckoner = new Reckoner(session);
        assertEquals(0.1 * 3, reckoner.number("x * 3"));
        assertEquals(7, reckoner.number("3 + 4"));
        RefusedException unknown = assertThrows(RefusedException.class, () -> reckoner.number("y * 3"));
        assertTrue(unknown.getMessage().contains("Nothing is called y"), unknown.getMessage());
        RefusedException text = assertThrows(RefusedException.class, () -> reckoner.number("\"a\""));
        assertTrue(text.getMessage().contains("type String"), text.getMessage());
        assertThrows(RefusedException.class, () -> reckoner.number("1.0 / 0"));
        assertThrows(RefusedException.class, () -> reckoner.number(""));
    }

    @Test
    void severalNumbersAreReckonedTogetherOrNotAtAll() {
        session.run("a", "double litres = 1.5;");
        Reckoner reckoner = new Reckoner(session);

        assertEquals(
                Map.of("litres / 3", 0.5, "7 / 2 // halved", 3.0, "(byte) -4", -4.0, "0.5f", 0.5),
                reckoner.together(List.of("litres / 3", "7 / 2 // halved", "(byte) -4", "0.5f")));
        assertEquals(
                Map.of("1", 1.0, "int n = 3; n * 2", 6.0, "int n = 4; double m = n; m", 4.0),
                reckoner.together(List.of("1", "int n = 3; n * 2", "int n = 4; double m = n; m", "1")));
        assertEquals(Map.of("1", 1.0, "2", 2.0), reckoner.together(List.of("1", "2; // 3; 4", "2")));
        for (String other : List.of("1.0 / 0", "java.math.BigDecimal.ONE", "'c'", "\"3\"", "unknown", "1 / 0")) {
            assertEquals(Map.of(), reckoner.together(List.of("1", other)), other);
        }
    }
}
