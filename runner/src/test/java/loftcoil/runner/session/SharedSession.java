package loftcoil.runner.session;

import java.time.Duration;

/** Sessions for tests. */
public final class SharedSession {

    /** Processor time: ample for anything honest, and what computes for ever is ended soon. */
    private static final Duration TIME = Duration.ofSeconds(3);

    /** By the clock: a machine that does twenty things at once takes long for them. */
    private static final Duration CLOCK = Duration.ofMinutes(10);

    private static final Limits SHORT = new Limits(TIME, CLOCK, 64, 10_000, 3);
    private static final SessionSetup PATIENT = patient();

    private SharedSession() {}

    /**
     * A session with the usual limits in a Java machine that other tests of this process use too, one after the other; it has none
     * of their names. For tests that are not about machines.
     */
    public static Session lent() {
        return KeptShells.session(PATIENT);
    }

    /** The same with {@link #open()}'s short limits. */
    public static Session lentWithShortLimits() {
        return KeptShells.session(setup(SHORT));
    }

    /** The usual setting, but for the clock, which here ends nothing however busy the machine is. */
    public static SessionSetup patient() {
        Limits usual = Limits.usual();
        return setup(new Limits(usual.time(), CLOCK, usual.memoryMb(), usual.printedChars(), usual.charts()));
    }

    /** A session of its own with short limits, so that what is ended by them ends soon. */
    static Session open() {
        return open(SHORT);
    }

    static Session open(Limits limits) {
        return Session.open(setup(limits));
    }

    private static SessionSetup setup(Limits limits) {
        SessionSetup usual = SessionSetup.usual();
        return new SessionSetup(usual.classPath(), usual.named(), usual.prelude(), limits);
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
