package loftcoil.engine.study;

import java.util.function.Function;

/**
 * How a long search ended.
 *
 * @param <T> what it finds
 */
public sealed interface SearchOutcome<T> {

    /** What is known: all of it, or as much as there was when it was stopped. */
    T result();

    /**
     * Handles each case.
     *
     * @param finished what to do with a whole result
     * @param cancelled what to do with a part of one
     */
    default <R> R match(
            Function<? super Finished<T>, ? extends R> finished,
            Function<? super Cancelled<T>, ? extends R> cancelled) {
        return this instanceof Finished<T> whole ? finished.apply(whole) : cancelled.apply((Cancelled<T>) this);
    }

    /**
     * It went to its end.
     *
     * @param result what it found
     */
    record Finished<T>(T result) implements SearchOutcome<T> {}

    /**
     * It was stopped.
     *
     * @param result what is known so far
     * @param done parts done
     * @param of parts in all
     */
    record Cancelled<T>(T result, int done, int of) implements SearchOutcome<T> {}
}
