package loftcoil.runner.session.words;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the known name that was most likely meant: at most one change in three letters. */
final class NearName {

    /** Names from Java itself that learners meet. */
    private static final Set<String> OF_JAVA = Set.of(
            "String", "System", "Math", "List", "Map", "Arrays", "double", "int", "boolean", "sqrt", "abs", "pow",
            "max", "min", "round", "println", "printf", "plot", "steps", "each", "length");

    private static final int LETTERS_A_CHANGE = 3;

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

    /** How many letters must be put in, left out, changed or swapped with a neighbour to make one from the other. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
