package loftcoil.engine.fault;

import java.util.List;

/** Thrown where an input cannot be computed. It carries every fault found, at least one. */
public final class RefusedException extends Refusal {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /**
     * Refuses with the given faults.
     *
     * @param faults all faults found, at least one
     * @throws IllegalArgumentException where the list is empty
     */
    public RefusedException(List<Fault> faults) {
        super(lines(faults, Fault::line));
        this.faults = List.copyOf(faults);
    }

    /** All faults found, in the order they were met. */
    public List<Fault> faults() {
        return faults;
    }

    /** All faults, one line each. */
    public List<String> lines() {
        return faults.stream().map(Fault::line).toList();
    }

    /** All faults, one line each, never null. */
    @Override
    public String getMessage() {
        return String.join("\n", lines());
    }
}
