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
     * @param stepId the step to go to; empty for where the learner was
     */
    record To(String lessonId, String stepId) implements Move {

        /** To where the learner was in it. */
        To(String lessonId) {
            this(lessonId, "");
        }
    }
}
