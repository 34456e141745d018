package loftcoil.runner.exercise;

import java.util.List;

/**
 * A decision that goes into the learner's own design. Nothing is right or wrong here.
 *
 * @param about what every kind has
 * @param change name of the design change
 * @param unit unit of the number to decide on; empty where one of the options is to be chosen
 * @param options texts to choose among; empty where a number is to be given
 */
public record Decision(About about, String change, String unit, List<String> options) implements Exercise {

    /** Keeps its own copies. */
    public Decision {
        options = List.copyOf(options);
    }

    @Override
    public Decision with(Numbers numbers) {
        return new Decision(about.with(numbers), change, unit, options);
    }
}
