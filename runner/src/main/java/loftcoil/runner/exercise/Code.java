package loftcoil.runner.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/**
 * A few lines of Java are asked for; their last value is what counts.
 *
 * @param about what every kind has
 * @param starter Java to begin from; empty where there is none
 * @param reference the value to meet
 * @param published a fixed case, if there is one
 * @param tolerance how far off is right
 * @param mistakes typical slips, the likeliest first
 * @param lines the form without typing: line by line what may stand there, the right one first, or the one that always
 *     stands; empty where there is no such form
 */
public record Code(
        About about,
        String starter,
        Reference reference,
        Optional<Published> published,
        Tolerance tolerance,
        List<KnownMistake> mistakes,
        List<List<String>> lines)
        implements Reckoned {

    /** Keeps its own copies. */
    public Code {
        mistakes = List.copyOf(mistakes);
        lines = lines.stream().map(List::copyOf).toList();
    }

    /** The Java of the form without typing, the right line chosen in every place. */
    public String rightLines() {
        return lines.stream().map(line -> line.get(0)).collect(Collectors.joining("\n"));
    }

    /** The Java with one wrong line each, every other right. */
    public List<String> wrongLines() {
        List<String> wrong = new ArrayList<>();
        for (int place = 0; place < lines.size(); place++) {
            for (String other : lines.get(place).subList(1, lines.get(place).size())) {
                List<String> all =
                        new ArrayList<>(lines.stream().map(line -> line.get(0)).toList());
                all.set(place, other);
                wrong.add(String.join("\n", all));
            }
        }
        return wrong;
    }

    /** The same with what may stand in a line in an order by chance. */
    Code shuffled(RandomGenerator random) {
        List<List<String>> own = new ArrayList<>();
        for (List<String> line : lines) {
            List<String> left = new ArrayList<>(line);
            List<String> drawn = new ArrayList<>();
            while (!left.isEmpty()) {
                drawn.add(left.remove(random.nextInt(left.size())));
            }
            own.add(drawn);
        }
        return new Code(about, starter, reference, published, tolerance, mistakes, own);
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
                mistakes.stream().map(mistake -> mistake.with(numbers)).toList(),
                withNumbers(numbers));
    }

    private List<List<String>> withNumbers(Numbers numbers) {
        if (lines.isEmpty() || numbers.values().isEmpty()) {
            return lines;
        }
        List<List<String>> own = new ArrayList<>();
        own.add(List.of(numbers.declarations()));
        own.addAll(lines);
        return own;
    }
}
