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

    private static final LevenshteinDistance LETTERS = LevenshteinDistance.getDefaultInstance();

    private NearName() {}

    static Optional<String> of(String name, Set<String> known) {
        int allowed = Math.max(1, name.length() / LETTERS_A_CHANGE);
        return java.util.stream.Stream.concat(known.stream(), OF_JAVA.stream())
                .filter(candidate -> !candidate.equals(name))
                .filter(candidate -> Math.abs(candidate.length() - name.length()) <= allowed)
                .filter(candidate -> distance(lower(name), lower(candidate)) <= allowed)
                .min(Comparator.comparingInt((String candidate) -> distance(lower(name), lower(candidate)))
                        .thenComparing(Comparator.naturalOrder()));
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
