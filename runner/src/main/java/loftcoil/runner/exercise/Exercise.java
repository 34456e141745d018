package loftcoil.runner.exercise;

/** Something to answer, as read from its file, or with one learner's numbers in it: see {@link Numbers}. */
public sealed interface Exercise permits Reckoned, Choice, Decision, Mend {

    /** What all kinds have. */
    About about();

    /**
     * The same exercise with these numbers in its text and declared in front of its Java. Nothing varies in it any more.
     *
     * @param numbers a value for each name that varies
     */
    Exercise with(Numbers numbers);

    /** Path below the exercises folder without ending, such as {@code 01-warm-water/two-legs}. */
    default String path() {
        return about().path();
    }

    /** The question, in CommonMark. */
    default String text() {
        return about().text();
    }

    /** True for a prediction, which is noted and compared but never judged. */
    default boolean before() {
        return about().before();
    }

    /** The word for this kind in the file and on the page: {@code quantity}, {@code choice}, {@code java}, {@code decision}, {@code mend}. */
    default String form() {
        if (this instanceof Quantity) {
            return "quantity";
        } else if (this instanceof Choice) {
            return "choice";
        } else if (this instanceof Code) {
            return "java";
        }
        return this instanceof Mend ? "mend" : "decision";
    }
}
