package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What the compiler finds is told at the learner's own line and column, in plain words. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(900)
class ProblemsTest {

    private Session session;

    @BeforeAll
    void open() {
        session = SharedSession.lentWithShortLimits();
        session.run("earlier", "double tankHeight = 2;\nint count = 0;");
    }

    @AfterAll
    void close() {
        session.close();
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/loftcoil/runner/session/mistakes.csv",
            delimiter = '|',
            quoteCharacter = '`',
            useHeadersInDisplayName = true)
    void eachMistakeIsSaidPlainly(String snippet, int line, int column, String words) {
        Outcome outcome = session.run("a", snippet.replace("\\n", "\n"));
        Outcome.NotJava notJava = assertInstanceOf(Outcome.NotJava.class, outcome, outcome.toString());
        Outcome.Problem first = notJava.problems().get(0);
        assertTrue(first.words().contains(words), first.toString());
        assertEquals(line + ":" + column, first.line() + ":" + first.column(), first.toString());
        assertFalse(first.compiler().isBlank());
    }

    @Test
    void thePiecesBeforeTheFirstProblemDidRun() {
        Outcome outcome =
                session.run("a", "System.out.println(\"yes\");\nint before = 4;\nint bad = ;\nint after = 5;");
        assertInstanceOf(Outcome.NotJava.class, outcome);
        assertEquals("yes\n", outcome.trace().printed());
        assertEquals("4", SharedSession.value(session, "b", "before"));
        assertInstanceOf(Outcome.NotJava.class, session.run("b", "after"));
    }
}
