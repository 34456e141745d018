package loftcoil.engine.fault;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * A closed set of names, such as the tubes of a table, that knows which of them a mistyped name was probably meant to be.
 *
 * @param kind what one of them is called, such as {@code tube}
 * @param names the names, in the order they are shown
 */
public record KnownNames(String kind, List<String> names) {

    private static final int SUGGESTIONS = 5;

    /** So many names and no more are all told. */
    private static final int FEW = 12;

    private static final int LONGEST_SHOWN = 60;

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[./]\\d+)*");

    /** Keeps a copy of the names. */
    public KnownNames {
        names = List.copyOf(names);
    }

    /**
     * The names most like the given one, the likeliest first: those that hold its numbers, so that "22 mm" finds the tubes
     * of 22 mm; of those that lack as many of its numbers, the ones whose own are nearest to these, so that 35x1.2 comes before
     * 15x1.0 for "35x1.1"; among them fewest letters to add, drop or change, capitals not counted.
     *
     * @param given any text
     * @return at most five names
     */
    public List<String> nearest(String given) {
        String wanted =
                given.substring(0, Math.min(given.length(), LONGEST_SHOWN)).toLowerCase(Locale.ROOT);
        LevenshteinDistance edits = LevenshteinDistance.getDefaultInstance();
        Set<String> numbers = numbers(wanted);
        return names.stream()
                .sorted(Comparator.<String>comparingInt(name -> missing(numbers, name))
                        .thenComparingDouble(name -> apart(numbers, name))
                        .thenComparingInt(name -> edits.apply(wanted, name.toLowerCase(Locale.ROOT))))
                .limit(SUGGESTIONS)
                .toList();
    }

    private static int missing(Set<String> numbers, String name) {
        Set<String> held = numbers(name);
        return (int) numbers.stream().filter(number -> !held.contains(number)).count();
    }

    /** How far the numbers that a name lacks are from the nearest it has, as shares of the larger; 1 where it has none. */
    private static double apart(Set<String> numbers, String name) {
        Set<String> held = numbers(name);
        return numbers.stream()
                .filter(number -> !held.contains(number))
                .mapToDouble(lacked -> held.stream()
                        .mapToDouble(other -> apart(value(lacked), value(other)))
                        .min()
                        .orElse(1))
                .sum();
    }

    private static double apart(double one, double other) {
        double larger = Math.max(one, other);
        double share = larger > 0 ? Math.abs(one - other) / larger : 0;
        return Double.isFinite(share) ? share : 1;
    }

    /** A number or a fraction such as 3/4; of longer chains the first number. */
    private static double value(String number) {
        String[] parts = number.split("/", -1);
        double first = leading(parts[0]);
        return parts.length == 2 ? first / leading(parts[1]) : first;
    }

    private static double leading(String decimal) {
        int first = decimal.indexOf('.');
        int second = first < 0 ? -1 : decimal.indexOf('.', first + 1);
        return Double.parseDouble(second < 0 ? decimal : decimal.substring(0, second));
    }

    private static Set<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    /**
     * The fault of naming something that is not in the set, on one line however long or odd the name.
     *
     * @param path where the name stands
     * @param given the name as it was given
     */
    public Fault unknown(String path, String given) {
        String allowed =
                names.size() <= FEW ? shown(names) : names.size() + " names, the nearest: " + shown(nearest(given));
        return new Fault(path, "\"" + PlainText.cut(given) + "\"", allowed, "no " + kind + " of that name is known");
    }

    /** Names may come from a file and hold anything. */
    private static String shown(List<String> names) {
        return names.stream().map(PlainText::cut).collect(Collectors.joining(", "));
    }
}
