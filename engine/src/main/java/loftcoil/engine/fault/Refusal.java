package loftcoil.engine.fault;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The root of all that is thrown where something asked for is not done and the program is not at fault. Each face tells
 * every refusal in one place; whatever else is thrown is a fault of the program. The message is for the person who asked,
 * one line a fault.
 */
public abstract class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * With what is to be told.
     *
     * @param words one line a fault: what it is about, what was given, what is allowed
     */
    protected Refusal(String words) {
        super(words);
    }

    /**
     * With what is to be told and what was met underneath.
     *
     * @param words one line a fault
     * @param cause what was met underneath
     */
    protected Refusal(String words, Throwable cause) {
        super(words, cause);
    }

    /** What kind of refusal it is. */
    public enum Kind {
        /** What was given cannot be used. */
        INPUT,
        /** What was asked for by name is not there. */
        UNKNOWN_NAME,
        /** What was to be kept could not be written or read. */
        FOLDER,
        /** No Java machine for snippets can be had. */
        NO_MACHINE
    }

    /** What kind of refusal it is; an input unless a type says otherwise. */
    public Kind kind() {
        return Kind.INPUT;
    }

    /**
     * The message of a refusal with several faults.
     *
     * @param <F> the kind of fault
     * @param faults all faults found, at least one
     * @param line the line of one
     * @throws IllegalArgumentException where the list is empty
     */
    protected static <F> String lines(List<F> faults, Function<F, String> line) {
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("faults: a refusal names at least one");
        }
        return faults.stream().map(line).collect(Collectors.joining("\n"));
    }
}
