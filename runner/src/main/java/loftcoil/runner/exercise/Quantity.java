package loftcoil.runner.exercise;

import java.util.List;
import java.util.Optional;

/**
 * A number with a unit is asked for.
 *
 * @param about what every kind has
 * @param reference the value to meet
 * @param also the same value as another kind of quantity that is accepted too, such as a volume flow for a mass flow
 * @param published a fixed case, if there is one
 * @param temperature how a temperature is meant; {@link Temperature#NONE} where the unit is none
 * @param tolerance how far off is right
 * @param mistakes typical slips, the likeliest first
 * @param slips general slips to look for besides those that are always looked for
 */
public record Quantity(
        About about,
        Reference reference,
        List<Reference> also,
        Optional<Published> published,
        Temperature temperature,
        Tolerance tolerance,
        List<KnownMistake> mistakes,
        List<Slip> slips)
        implements Reckoned {

    /** Keeps its own copies. */
    public Quantity {
        also = List.copyOf(also);
        mistakes = List.copyOf(mistakes);
        slips = List.copyOf(slips);
    }

    @Override
    public Quantity with(Numbers numbers) {
        return new Quantity(
                about.with(numbers),
                reference.with(numbers),
                also.stream().map(other -> other.with(numbers)).toList(),
                published,
                temperature,
                tolerance,
                mistakes.stream().map(mistake -> mistake.with(numbers)).toList(),
                slips);
    }

    /** How a temperature is meant. */
    public enum Temperature {
        /** The unit is no temperature. */
        NONE,
        /** How warm something is: 20 °C is 68 °F. */
        LEVEL,
        /** How much warmer: 20 °C is 36 °F. */
        DIFFERENCE
    }

    /** A slip that only some exercises invite. */
    public enum Slip {
        /** The diameter was taken for the radius, or the other way round, in a length. */
        DIAMETER,
        /** The same within an area. */
        DIAMETER_SQUARED
    }
}
