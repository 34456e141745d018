package loftcoil.runner.session;

import java.time.Duration;

/** Sessions for tests. */
public final class SharedSession {

    /** Processor time: ample for anything honest, and what computes for ever is ended soon. */
    private static final Duration TIME = Duration.ofSeconds(6);

    /** By the clock: a machine that does twenty things at once takes long for them. */
    private static final Duration CLOCK = Duration.ofMinutes(10);

    private SharedSession() {}

    /**
     * A session with the usual limits in a Java machine that other tests of this process use too, one after the other; it has none
     * of their names. For tests that are not about machines.
     */
    public static Session lent() {
        return KeptShells.session();
    }

    /** The usual setting, but for the clock, which here ends nothing however busy the machine is. */
    public static SessionSetup patient() {
        SessionSetup usual = SessionSetup.usual();
        Limits limits = usual.limits();
        return new SessionSetup(
                usual.classPath(),
                usual.prelude(),
                new Limits(limits.time(), CLOCK, limits.memoryMb(), limits.printedChars(), limits.charts()));
    }

    /** A session of its own with short limits, so that what is ended by them ends soon. */
    static Session open() {
        return open(new Limits(TIME, CLOCK, 64, 10_000, 3));
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
