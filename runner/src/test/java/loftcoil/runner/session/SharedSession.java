package loftcoil.runner.session;

import java.time.Duration;

/** Sessions for tests: short limits, so that what is ended by them ends soon. */
final class SharedSession {

    /** Long enough for a slow machine to compile and start anything honest. */
    static final Duration TIME = Duration.ofSeconds(6);

    private SharedSession() {}

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
