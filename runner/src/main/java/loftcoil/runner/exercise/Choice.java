package loftcoil.runner.exercise;

import java.util.List;

/**
 * One of several texts is to be chosen.
 *
 * @param about what every kind has
 * @param options the texts, at least two, just one of them right
 */
public record Choice(About about, List<Option> options) implements Exercise {

    /** Keeps its own copies. */
    public Choice {
        options = List.copyOf(options);
    }

    @Override
    public Choice with(Numbers numbers) {
        return new Choice(
                about.with(numbers),
                options.stream()
                        .map(option ->
                                new Option(numbers.fill(option.text()), option.right(), numbers.fill(option.say())))
                        .toList());
    }

    /**
     * One text to choose.
     *
     * @param text what it says
     * @param right true for the right one
     * @param say what to say to who chose it, in CommonMark
     */
    public record Option(String text, boolean right, String say) {}
}
