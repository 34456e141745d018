package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Session;

/** Keeps the variable {@code design} of a session the learner's own; written anew only where the design has changed. */
final class BoundDesign {

    private Optional<Design> bound = Optional.empty();

    /** Brings the design into the session, unless it is there already. */
    void bring(Session session, Design design) {
        Optional<Design> wanted = Optional.of(design);
        if (!wanted.equals(bound)) {
            DesignBinding.bind(session, DesignJson.write(design));
            bound = wanted;
        }
    }

    /** The session has forgotten all names, this one too. */
    void forget() {
        bound = Optional.empty();
    }
}
