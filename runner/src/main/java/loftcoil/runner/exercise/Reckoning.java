package loftcoil.runner.exercise;

import java.util.Collection;
import java.util.Map;

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

    /**
     * The values of several pieces of Java, where they can be had for little more than the price of one.
     *
     * @param java as for {@link #number}
     * @return values by their Java; what is not among them has to be reckoned by itself, which tells why
     */
    default Map<String, Double> together(Collection<String> java) {
        return Map.of();
    }
}
