package loftcoil.runner.course;

import java.util.List;
import loftcoil.engine.fault.Refusal;

/** Thrown where a course cannot be used. It carries every fault found in all its files, at least one. */
public final class CourseRefusedException extends Refusal {

    private static final long serialVersionUID = 1L;

    private final transient List<CourseFault> faults;

    /**
     * Refuses with the given faults.
     *
     * @param faults all faults found, at least one
     * @throws IllegalArgumentException where the list is empty
     */
    public CourseRefusedException(List<CourseFault> faults) {
        super(lines(faults, CourseFault::words));
        this.faults = List.copyOf(faults);
    }

    /** All faults found. */
    public List<CourseFault> faults() {
        return faults;
    }
}
