package loftcoil.runner.session;

import java.time.Duration;

/** Sessions for tests. */
public final class SharedSession {

    /** Long enough for a slow machine to compile and start anything honest. */
    static final Duration TIME = Duration.ofSeconds(10);

    private SharedSession() {}

    /**
     * A session with the usual limits in a Java machine that other tests of this process use too, one after the other; it has none
     * of their names. For tests that are not about machines.
     */
    public static Session lent() {
        return KeptShells.session();
    }

    /** A session of its own with short limits, so that what is ended by them ends soon. */
    static Session open() {
        return open(new Limits(TIME, 64, 10_000, 3));
    }

    static Session open(Limits limits) {
        SessionSetup usual = SessionSetup.usual();
        return Session.open(new SessionSetup(usual.classPath(), usual.prelude(), limits));
    }

    /** The value a snippet ended with; fails where it did not end well. */
    static String value(Session session, String step, String source) {
        Outcome outcome = session.run(step, source);
        if (outcome instanceof Outcome.Done done) {
            return done.value();
        }
        throw new AssertionError(source + " gave " + outcome);
    }
}
