package loftcoil.runner.exercise;

import java.util.List;
import java.util.Optional;

/**
 * A few lines of Java are asked for; their last value is what counts.
 *
 * @param about what every kind has
 * @param starter Java to begin from; empty where there is none
 * @param reference the value to meet
 * @param published a fixed case, if there is one
 * @param tolerance how far off is right
 * @param mistakes typical slips, the likeliest first
 */
public record Code(
        About about,
        String starter,
        Reference reference,
        Optional<Published> published,
        Tolerance tolerance,
        List<KnownMistake> mistakes)
        implements Reckoned {

    /** Keeps its own copies. */
    public Code {
        mistakes = List.copyOf(mistakes);
    }

    /** The starter gets its numbers as text; so the learner sees what is declared. */
    @Override
    public Code with(Numbers numbers) {
        return new Code(
                about.with(numbers),
                numbers.before(starter),
                reference.with(numbers),
                published,
                tolerance,
                mistakes.stream().map(mistake -> mistake.with(numbers)).toList());
    }
}
