package loftcoil.runner.session.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known name that was most likely meant: at most one change in three letters. */
final class NearName {

    /** Names from Java itself that learners meet. */
    private static final Set<String> OF_JAVA = Set.of(
            "String", "System", "Math", "List", "Map", "Arrays", "double", "int", "boolean", "sqrt", "abs", "pow",
            "max", "min", "round", "println", "printf", "plot", "steps", "each", "length");

    private static final int LETTERS_A_CHANGE = 3;
    /** A shorter name is near to too many. */
    private static final int FEWEST_LETTERS = 4;

    private static final LevenshteinDistance LETTERS = LevenshteinDistance.getDefaultInstance();

    private NearName() {}

    static Optional<String> of(String name, Set<String> known) {
        int allowed = name.length() < FEWEST_LETTERS ? 0 : name.length() / LETTERS_A_CHANGE;
        return java.util.stream.Stream.concat(known.stream(), OF_JAVA.stream())
                .filter(candidate -> !candidate.equals(name))
                .filter(candidate -> Math.abs(candidate.length() - name.length()) <= allowed)
                .filter(candidate -> distance(lower(name), lower(candidate)) <= allowed)
                .min(Comparator.comparingInt((String candidate) -> distance(lower(name), lower(candidate)))
                        .thenComparing(Comparator.naturalOrder()))
                .or(() -> begun(name, known));
    }

    /** The shortest name that begins with what was written, as {@code density} begins {@code densityKgPerM3}. */
    private static Optional<String> begun(String name, Set<String> known) {
        return known.stream()
                .filter(candidate -> name.length() >= FEWEST_LETTERS && candidate.startsWith(name))
                .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    /** How many letters must be put in, left out or changed to make one from the other; one where they only changed places. */
    private static int distance(String a, String b) {
        return Arrays.equals(a.chars().sorted().toArray(), b.chars().sorted().toArray())
                ? Math.min(1, LETTERS.apply(a, b))
                : LETTERS.apply(a, b);
    }
}
