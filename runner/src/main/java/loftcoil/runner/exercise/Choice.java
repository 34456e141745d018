package loftcoil.runner.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One of several texts is to be chosen.
 *
 * @param about what every kind has
 * @param options the texts, at least two, just one of them right
 */
public record Choice(About about, List<Option> options) implements Exercise {

    /** Keeps its own copies, and numbers the options that have no number yet. */
    public Choice {
        List<Option> numbered = new ArrayList<>();
        for (Option option : options) {
            int number = option.number() > 0 ? option.number() : numbered.size() + 1;
            numbered.add(new Option(option.text(), option.right(), option.say(), number));
        }
        options = List.copyOf(numbered);
    }

    /** The same texts in an order of chance; each keeps its number. */
    Choice shuffled(SplittableRandom random) {
        List<Option> left = new ArrayList<>(options);
        List<Option> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(random.nextInt(left.size())));
        }
        return new Choice(about, order);
    }

    @Override
    public Choice with(Numbers numbers) {
        return new Choice(
                about.with(numbers),
                options.stream()
                        .map(option -> new Option(
                                numbers.fill(option.text()),
                                option.right(),
                                numbers.fill(option.say()),
                                option.number()))
                        .toList());
    }

    /**
     * One text to choose.
     *
     * @param text what it says
     * @param right true for the right one
     * @param say what to say to who chose it, in CommonMark
     * @param number its place among the options as they are written, from 1; the same for every learner. 0 where it has none yet
     */
    public record Option(String text, boolean right, String say, int number) {

        /** An option without its number. */
        public Option(String text, boolean right, String say) {
            this(text, right, say, 0);
        }
    }
}
