package loftcoil.engine.sun;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Collects what is wrong with a record's parts, so that all of it is told at once. */
final class FaultList {

    private final List<Fault> faults = new ArrayList<>();

    FaultList check(String path, double value, Allowed allowed) {
        allowed.faultIn(path, value).ifPresent(faults::add);
        return this;
    }

    FaultList add(Fault fault) {
        faults.add(fault);
        return this;
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    void refuseIfAny() {
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
