package loftcoil.runner.exercise;

import java.util.List;
import loftcoil.engine.fault.Refusal;

/** Thrown where an exercise cannot be read. It carries every fault found, at least one. */
public final class ExerciseRefusedException extends Refusal {

    private static final long serialVersionUID = 1L;

    private final transient List<ExerciseFault> faults;

    /**
     * Refuses with the given faults.
     *
     * @param faults all faults found, at least one
     * @throws IllegalArgumentException where the list is empty
     */
    public ExerciseRefusedException(List<ExerciseFault> faults) {
        super(lines(faults, ExerciseFault::words));
        this.faults = List.copyOf(faults);
    }

    /** All faults found, in the order they were met. */
    public List<ExerciseFault> faults() {
        return faults;
    }
}
