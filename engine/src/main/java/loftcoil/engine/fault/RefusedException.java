package loftcoil.engine.fault;

import java.util.List;

/** Thrown where an input cannot be read or computed. It carries every fault found, at least one. */
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

    /**
     * The refusal of one thing, of which the other parts of its fault say all.
     *
     * @param path where it stands, outermost first
     * @param given what was given
     * @param allowed what is allowed there
     */
    public static RefusedException of(String path, String given, String allowed) {
        return new RefusedException(List.of(new Fault(path, given, allowed, "")));
    }

    /** All faults found, in the order they were met. */
    public List<Fault> faults() {
        return faults;
    }

    /**
     * The same refusal, with what the places of its faults stand in told too.
     *
     * @param around a file or part, as the person who wrote it knows it
     */
    public RefusedException in(String around) {
        return new RefusedException(
                faults.stream().map(fault -> fault.in(around)).toList());
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
