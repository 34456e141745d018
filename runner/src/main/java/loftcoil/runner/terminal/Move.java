package loftcoil.runner.terminal;

/** Where to go from a step. */
sealed interface Move {

    /** To the next step. */
    record On() implements Move {}

    /** To the step before. */
    record Back() implements Move {}

    /** Out of the course. */
    record Leave() implements Move {}

    /**
     * To another lesson.
     *
     * @param lessonId its name
     */
    record To(String lessonId) implements Move {}
}
