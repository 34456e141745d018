package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** A lent session is as good as a fresh one: what other tests leave behind must not be there. */
class SharedSessionTest {

    private static final String DECLARED =
            """
            import java.util.concurrent.atomic.AtomicLong;
            record Pair(int a, int b) { }
            int first = 1;
            int twice(int n) { return 2 * n * first; }
            var pair = new Pair(first, twice(first));
            """;

    private static void nothingIsThere(Session session) {
        for (String name : new String[] {"first", "twice(1)", "pair", "new Pair(1, 2)", "new AtomicLong()"}) {
            assertInstanceOf(Outcome.NotJava.class, session.run("look", name), name);
        }
        assertEquals("3.0", SharedSession.value(session, "next", "double first = 3;\nfirst"));
    }

    @Test
    void theNextBorrowerHasTheMachineAndNoneOfTheNames() {
        long pid;
        try (Session session = SharedSession.lent()) {
            assertInstanceOf(Outcome.Done.class, session.run("a", DECLARED));
            pid = session.pid();
        }
        try (Session session = SharedSession.lent()) {
            assertEquals(pid, session.pid());
            nothingIsThere(session);
        }
    }

    @Test
    void forgettingTakesTheNamesAway() {
        try (Session session = SharedSession.lent()) {
            assertInstanceOf(Outcome.Done.class, session.run("a", DECLARED));
            session.forget();
            nothingIsThere(session);
        }
    }

    @Test
    void aMachineThatWasEndedIsNotLentAgain() {
        long pid;
        try (Session session = SharedSession.lent()) {
            pid = session.pid();
            assertInstanceOf(Outcome.Stopped.class, session.run("a", "Runtime.getRuntime().halt(3);"));
        }
        try (Session session = SharedSession.lent()) {
            assertNotEquals(pid, session.pid());
            assertEquals("2", SharedSession.value(session, "a", "1 + 1"));
        }
    }

    @Test
    void whoHasClosedOneCannotReachItAnyMore() {
        Session session = SharedSession.lent();
        session.run("a", "1");
        session.close();
        assertThrows(SessionException.class, () -> session.run("a", "1"));
    }
}
