package loftcoil.engine.study;

/** Whoever waits for a long search: is told how far it is, and may stop it. */
public interface ProgressListener {

    /** Waits to the end and wants to hear nothing. */
    ProgressListener NONE = new ProgressListener() {};

    /**
     * How far the search is. Called one call at a time, but maybe from other threads than the one that waits.
     *
     * @param done parts done
     * @param of parts in all
     */
    default void done(int done, int of) {}

    /** Whether to stop. Asked often, from any thread of the search. */
    default boolean cancelled() {
        return false;
    }
}
