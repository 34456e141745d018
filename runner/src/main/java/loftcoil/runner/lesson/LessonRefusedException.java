package loftcoil.runner.lesson;

import java.util.List;
import loftcoil.engine.fault.Refusal;

/** Thrown where a lesson cannot be read. It carries every fault found, at least one. */
public final class LessonRefusedException extends Refusal {

    private static final long serialVersionUID = 1L;

    private final transient List<LessonFault> faults;

    /**
     * Refuses with the given faults.
     *
     * @param faults all faults found, at least one
     * @throws IllegalArgumentException where the list is empty
     */
    public LessonRefusedException(List<LessonFault> faults) {
        super(lines(faults, LessonFault::words));
        this.faults = List.copyOf(faults);
    }

    /** All faults found, in the order of their lines. */
    public List<LessonFault> faults() {
        return faults;
    }
}
