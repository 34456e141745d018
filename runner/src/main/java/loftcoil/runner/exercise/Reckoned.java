package loftcoil.runner.exercise;

import java.util.List;
import java.util.Optional;

/** An exercise whose answer is a number, checked against a reference that Java computes. */
public sealed interface Reckoned extends Exercise permits Quantity, Code {

    /** The value to meet. */
    Reference reference();

    /** A fixed case with a value from outside, if there is one. */
    Optional<Published> published();

    /** How far off is right. */
    Tolerance tolerance();

    /** Typical slips, the likeliest first. */
    List<KnownMistake> mistakes();

    @Override
    Reckoned with(Numbers numbers);
}
