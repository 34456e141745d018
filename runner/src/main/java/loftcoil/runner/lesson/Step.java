package loftcoil.runner.lesson;

import java.util.Optional;

/** One thing a learner meets in a lesson, in reading order. */
public sealed interface Step {

    /** Name of the step, unique within its lesson and stable while the lesson's text is edited around it. */
    String id();

    /** Line of the lesson file it starts on, counted from 1. */
    int line();

    /**
     * Text to read.
     *
     * @param id name of the step
     * @param line first line in the file, from 1
     * @param markdown the CommonMark source
     */
    record Prose(String id, int line, String markdown) implements Step {}

    /**
     * A warning that stands where the hand would be hurt.
     *
     * @param id name of the step
     * @param line first line in the file, from 1
     * @param danger true for a danger to life, false for a caution
     * @param markdown the CommonMark source, without the leading word
     */
    record Caution(String id, int line, boolean danger, String markdown) implements Step {}

    /**
     * The learner's own loop, drawn to scale.
     *
     * @param id name of the step
     * @param line first line in the file, from 1
     * @param caption what the lesson calls it
     */
    record Drawing(String id, int line, String caption) implements Step {}

    /**
     * Java the learner runs and may edit.
     *
     * @param id name of the step, given in the lesson
     * @param line line of the first line of code, from 1
     * @param source the code as the lesson has it
     * @param drag the value the learner can drag, if there is one
     */
    record Snippet(String id, int line, String source, Optional<Drag> drag) implements Step {}

    /**
     * Something the learner answers or decides.
     *
     * @param id name of the step: the exercise's own name, without its folder
     * @param line first line in the file, from 1
     * @param asked what the lesson asks for
     * @param label the words of the lesson's link after the kind
     * @param exercise path of the exercise below the exercises folder, without ending, such as {@code 01-warm-water/head}
     */
    record Question(String id, int line, Asked asked, String label, String exercise) implements Step {

        /** Whether it counts as done once it is right or decided: a guess does not, nor does what was asked before. */
        public boolean counted() {
            return asked == Asked.QUESTION || asked == Asked.DECIDE;
        }
    }

    /** What kind of reply a question step wants. */
    enum Asked {
        /** A guess before the numbers are run; noted and compared, never judged. */
        PREDICT,
        /** An answer that is checked. */
        QUESTION,
        /** A choice that goes into the learner's own design. */
        DECIDE,
        /** A question of an earlier lesson once more, with other numbers. */
        AGAIN
    }
}
