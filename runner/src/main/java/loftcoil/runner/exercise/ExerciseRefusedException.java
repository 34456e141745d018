package loftcoil.runner.exercise;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown where an exercise cannot be read. It carries every fault found, at least one. */
public final class ExerciseRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<ExerciseFault> faults;

    /**
     * Refuses with the given faults.
     *
     * @param faults all faults found, at least one
     * @throws IllegalArgumentException where the list is empty
     */
    public ExerciseRefusedException(List<ExerciseFault> faults) {
        super(faults.stream().map(ExerciseFault::words).collect(Collectors.joining("\n")));
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("faults: a refusal names at least one");
        }
        this.faults = List.copyOf(faults);
    }

    /** All faults found, in the order they were met. */
    public List<ExerciseFault> faults() {
        return faults;
    }
}
