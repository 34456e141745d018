package loftcoil.runner.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time of day as people write it: 17, 17.5, 17:30, 18.30, 1730, 5 pm, 5:30 p.m., noon, half past six, five to midnight, a quarter
 * to seven in the evening.
 *
 * @param hours hours since midnight, 0 up to 24
 * @param halfSaid whether it is clear which half of the day is meant
 */
public record ClockText(double hours, boolean halfSaid) {

    private static final int NOON = 12;
    private static final List<String> NUMBERS =
            List.of("twelve", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven");
    private static final String HOUR = "(\\d{1,2}|" + String.join("|", NUMBERS) + ")";
    private static final String HALF =
            "(?:\\s*(a\\.?m\\.?|p\\.?m\\.?|in the morning|in the afternoon|in the evening|at night))?";
    private static final String CLOCK = "(?:\\s*(?:o['’]?\\s?clock|h|hrs?|hours?))?";

    private static final Pattern FIGURES =
            Pattern.compile("(\\d{1,2})(?:\\s*[:.hH]\\s*([0-5]\\d)|([0-5]\\d))?" + CLOCK + HALF);
    private static final Pattern DECIMAL = Pattern.compile("(\\d{1,2}[.,]\\d)" + CLOCK + HALF);
    private static final List<String> MINUTES = List.of("five", "ten", "fifteen", "twenty", "twenty-five");
    private static final String AWAY = "(?:(?:(?:an? )?(half|quarter)|(twenty[- ]five|five|ten|fifteen|twenty|\\d{1,2})"
            + "(?: minutes?| mins?)?) (past|to|till|of|after|before) )";

    private static final Pattern WORDS = Pattern.compile(AWAY + "?" + HOUR + CLOCK + HALF);
    private static final Pattern BESIDE_TWELVE = Pattern.compile(AWAY + "(noon|midday|midnight)");
    private static final Pattern AHEAD = Pattern.compile("^(?:(?:at|about|around|from|usually|ca\\.?|~)\\s*)+");

    /** The time of day written there; nothing where there is none. */
    public static Optional<ClockText> read(String typed) {
        String plain = typed.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\\p{Z}\\p{Cc}\\p{Cf}]+", " ")
                .strip();
        String text = AHEAD.matcher(plain).replaceFirst("").replaceFirst("(?<![ap]\\.m)[.!]$", "");
        if (text.matches("noon|midday|12 noon")) {
            return Optional.of(new ClockText(NOON, true));
        } else if (text.matches("midnight|12 midnight")) {
            return Optional.of(new ClockText(0, true));
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.matches()) {
            return at(Double.parseDouble(decimal.group(1).replace(',', '.')), decimal.group(2));
        }
        Matcher figures = FIGURES.matcher(text);
        if (figures.matches()) {
            String minutes = figures.group(2) == null ? figures.group(3) : figures.group(2);
            // Three figures in a row, such as 173, are as likely a slip as a time.
            boolean together = figures.group(3) != null;
            return together && figures.group(1).length() < 2
                    ? Optional.empty()
                    : at(Integer.parseInt(figures.group(1)) + number(minutes) / 60, figures.group(4));
        }
        Matcher beside = BESIDE_TWELVE.matcher(text);
        if (beside.matches()) {
            // Before midnight is the end of the day, after it the beginning.
            double twelve = !beside.group(4).equals("midnight") ? NOON : back(beside) ? 24 : 0;
            return from(twelve, beside).flatMap(ClockText::read24);
        }
        Matcher words = WORDS.matcher(text);
        return words.matches() ? spoken(words) : Optional.empty();
    }

    private static Optional<ClockText> spoken(Matcher words) {
        double hour = hour(words.group(4));
        return hour > 24
                ? Optional.empty()
                : from(back(words) && hour == 0 ? 24 : hour, words).flatMap(hours -> at(hours, words.group(5)));
    }

    private static boolean back(Matcher words) {
        return words.group(3) != null && words.group(3).matches("to|till|of|before");
    }

    /** That many minutes from the hour, before or after it; half to an hour is nobody's way to say it. */
    private static Optional<Double> from(double hour, Matcher words) {
        boolean half = "half".equals(words.group(1));
        double minutes = words.group(1) == null ? number(words.group(2)) : half ? 30 : 15;
        if (minutes >= 60 || (half && back(words))) {
            return Optional.empty();
        }
        return Optional.of(back(words) ? hour - minutes / 60 : hour + minutes / 60);
    }

    private static double hour(String text) {
        int named = NUMBERS.indexOf(text);
        return named < 0 ? Integer.parseInt(text) : named == 0 ? NOON : named;
    }

    private static double number(@Nullable String text) {
        if (text == null) {
            return 0;
        }
        int named = MINUTES.indexOf(text.replace(' ', '-'));
        return named < 0 ? Integer.parseInt(text) : List.of(5, 10, 15, 20, 25).get(named);
    }

    private static Optional<ClockText> at(double hours, @Nullable String half) {
        if (half == null) {
            return hours <= 24 ? Optional.of(new ClockText(hours, hours >= 13 || hours < 1)) : Optional.empty();
        }
        boolean late = half.startsWith("p") || half.contains("afternoon") || half.contains("evening");
        boolean night = half.contains("night");
        boolean twelve = hours >= NOON && hours < NOON + 1;
        if (hours >= NOON + 1) {
            // 17:30 pm says one thing twice; 17:30 am contradicts itself.
            return late || night ? read24(hours) : Optional.empty();
        }
        // Eight at night is late, three at night is early.
        boolean after = late || (night && hours >= 6 && !twelve);
        double from = twelve ? hours - NOON : hours;
        return read24(after ? from + NOON : from);
    }

    private static Optional<ClockText> read24(double hours) {
        return hours <= 24 ? Optional.of(new ClockText(hours, true)) : Optional.empty();
    }

    /** How it was understood. */
    String words() {
        String shown = shown(hours);
        return halfSaid || hours >= NOON
                ? shown
                : shown + " in the morning (for the other half of the day write " + shown(hours + NOON) + ")";
    }

    private static String shown(double hours) {
        long minutes = Math.round(hours * 60);
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
