package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Finds the lines of a snippet that only prepare or draw: bodies of methods and the chain after {@code plot(…)}. What is worth
 * changing (numbers, steps, what is printed) stays in sight.
 */
final class Preparation {

    /** The methods of a shorter snippet are seen at one look. */
    private static final int SHORT = 8;

    private static final int FEWEST = 2;
    private static final Pattern METHOD =
            Pattern.compile("(?!(?:for|if|while|do|try|switch|else|new)\\b)[A-Za-z].*\\(.*");
    private static final Pattern PLOT = Pattern.compile("plot\\(.*");

    private Preparation() {}

    static List<View.Fold> of(String source) {
        List<String> lines = source.lines().toList();
        List<View.Fold> folds = new ArrayList<>();
        boolean small = lines.size() <= SHORT;
        int at = 0;
        while (at < lines.size()) {
            int end = end(lines, at);
            if (end - at >= FEWEST && prepares(lines, at, end, small)) {
                folds.add(new View.Fold(at + 2, end + 1));
            }
            at = end + 1;
        }
        return folds;
    }

    /** How a plot is put together is folded in any snippet, a method only where there is much else to see. */
    private static boolean prepares(List<String> lines, int at, int end, boolean small) {
        String first = lines.get(at);
        boolean method = !small
                && METHOD.matcher(first).matches()
                && first.contains(" ")
                && !first.contains("=")
                && lines.get(end).startsWith("}");
        return method || PLOT.matcher(first).matches();
    }

    /** Index of the last line of the statement that starts on a line; of a line that starts none, the line itself. */
    private static int end(List<String> lines, int start) {
        int depth = 0;
        for (int i = start; i < lines.size(); i++) {
            String code = lines.get(i)
                    .replaceAll("\"(?:[^\"\\\\]|\\\\.)*\"", "\"\"")
                    .replaceAll("//.*", "")
                    .strip();
            depth += count(code, "([{") - count(code, ")]}");
            boolean ends = code.isEmpty() || code.endsWith(";") || code.endsWith("}");
            if (depth <= 0 && ends) {
                return i;
            }
        }
        return lines.size() - 1;
    }

    private static int count(String code, String marks) {
        return (int) code.chars().filter(c -> marks.indexOf(c) >= 0).count();
    }
}
