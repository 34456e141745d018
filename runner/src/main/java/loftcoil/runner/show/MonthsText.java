package loftcoil.runner.show;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.fault.RefusedException;

/** Months as people type them: by number or name, one after the other or from one to another, over New Year too. */
final class MonthsText {

    private static final Pattern RANGE =
            Pattern.compile("(\\S+)\\s*(?:\\b(?:to|through|thru|until|till)\\b|[-–])\\s*(\\S+)");
    private static final Pattern ALL =
            Pattern.compile("(?i)(?:all(?: (?:the )?year(?: round)?)?|year[ -]round|every month)\\.?");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int MONTHS = 12;

    /** A name is known by these many letters. */
    private static final int LETTERS = 3;

    private MonthsText() {}

    /**
     * The months as a field takes them, such as {@code 4, 5, 6}.
     *
     * @param path where they stand, for a refusal
     * @throws RefusedException where a word is no month
     */
    static String of(String typed, String path) {
        if (ALL.matcher(typed.strip()).matches()) {
            return of("1 to 12", path);
        }
        List<Integer> months = new ArrayList<>();
        for (String part : typed.toLowerCase(Locale.ROOT).split("[;,]|\\band\\b", -1)) {
            Matcher range = RANGE.matcher(part.strip());
            if (range.matches()) {
                int from = month(range.group(1), path);
                int to = month(range.group(2), path);
                for (int i = 0; i <= (to - from + MONTHS) % MONTHS; i++) {
                    months.add((from - 1 + i) % MONTHS + 1);
                }
            } else {
                for (String word : SPACES.split(part.strip(), -1)) {
                    if (!word.isEmpty()) {
                        months.add(month(word, path));
                    }
                }
            }
        }
        return months.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static int month(String word, String path) {
        if (word.matches("\\d{1,2}")) {
            return Integer.parseInt(word);
        }
        if (word.length() >= LETTERS) {
            for (Month month : Month.values()) {
                if (month.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                        .toLowerCase(Locale.ROOT)
                        .startsWith(word)) {
                    return month.getValue();
                }
            }
        }
        throw RefusedException.of(
                path, "“" + word + "”", "months by number or name, such as 4, 5, 6 or April to June, or none");
    }
}
