package loftcoil.runner.exercise;

import java.util.List;

/**
 * A decision that goes into the learner's own design. Nothing is right or wrong here.
 *
 * @param about what every kind has
 * @param change name of the design change
 * @param unit unit of the number to decide on; empty where one of the options is to be chosen
 * @param options texts to choose among; empty where a number is to be given
 * @param clock whether the number is an hour of the day, as a clock shows it
 */
public record Decision(About about, String change, String unit, List<String> options, boolean clock)
        implements Exercise {

    /** Keeps its own copies. */
    public Decision {
        options = List.copyOf(options);
    }

    /** A decision on anything but an hour of the day. */
    public Decision(About about, String change, String unit, List<String> options) {
        this(about, change, unit, options, false);
    }

    @Override
    public Decision with(Numbers numbers) {
        return new Decision(about.with(numbers), change, unit, options, clock);
    }
}
