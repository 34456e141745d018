package loftcoil.runner.show;

import java.util.Collection;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.session.Reckoner;
import loftcoil.runner.session.Session;
import org.jspecify.annotations.Nullable;

/**
 * Computes reference values, in a session of its own so that nothing a learner writes can bend them. It is opened when
 * first needed: a learner who only reads needs no second Java.
 */
final class ReferenceValues implements Reckoning {

    private final Supplier<Session> sessions;
    private final LearnerStore store;
    private @Nullable Session session;
    private final BoundDesign design = new BoundDesign();

    ReferenceValues(Supplier<Session> sessions, LearnerStore store) {
        this.sessions = sessions;
        this.store = store;
    }

    @Override
    public synchronized double number(String java) {
        try {
            return new Reckoner(ready()).number(java);
        } catch (RefusedException refused) {
            throw new ReckoningException(
                    refused.faults().stream().map(Fault::why).collect(Collectors.joining(" ")));
        }
    }

    @Override
    public synchronized Map<String, Double> together(Collection<String> java) {
        return new Reckoner(ready()).together(java);
    }

    private Session ready() {
        Session open = session;
        if (open == null) {
            open = sessions.get();
            session = open;
        }
        design.bring(open, store.design());
        return open;
    }

    /** Gives back the Java machine; the next value starts another. */
    synchronized void rest() {
        close();
        session = null;
        design.forget();
    }

    synchronized void close() {
        if (session != null) {
            session.close();
        }
    }
}
