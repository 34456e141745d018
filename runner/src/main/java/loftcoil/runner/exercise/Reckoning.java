package loftcoil.runner.exercise;

/** Computes the Java of an exercise: reference values, known mistakes, worked solutions, and what a learner wrote. */
@FunctionalInterface
public interface Reckoning {

    /**
     * Runs pieces of Java in order, with the engine's names at hand, and gives the value of the last one. What the pieces
     * declare is gone afterwards and never touches the learner's own names.
     *
     * @param java declarations and statements, the last of them an expression
     * @return the value; may be NaN or infinite
     * @throws ReckoningException where it is not Java, throws, is ended by a limit, or its last value is no number
     */
    double number(String java);
}
