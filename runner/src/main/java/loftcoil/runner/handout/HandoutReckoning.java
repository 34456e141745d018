package loftcoil.runner.handout;

import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.session.Reckoner;
import loftcoil.runner.session.Session;

/** Works out reference values in a session that no snippet of the lesson has touched. */
final class HandoutReckoning implements Reckoning {

    private final Reckoner reckoner;

    HandoutReckoning(Session session) {
        this.reckoner = new Reckoner(session);
    }

    @Override
    public double number(String java) {
        try {
            return reckoner.number(java);
        } catch (RefusedException refused) {
            throw new ReckoningException(
                    refused.faults().stream().map(Fault::why).collect(Collectors.joining(" ")));
        }
    }
}
