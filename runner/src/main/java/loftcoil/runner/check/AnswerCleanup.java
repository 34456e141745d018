package loftcoil.runner.check;

import java.util.regex.Pattern;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.unit.WrittenUnit;

/** Takes from an answer what carries no meaning: odd blanks, control characters, “about”, a full stop at the end. */
final class AnswerCleanup {

    /** Blanks of all kinds, control characters, and marks that show nothing, such as those of direction. */
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}]+");

    private static final Pattern AHEAD = Pattern.compile(
            "(?i)^(?:(?:about|approximately|approx\\.?|roughly|around|nearly|circa|ca\\.|c\\.|it is|it's)\\s*|[~≈=]\\s*"
                    + "|\\p{L}{1,12}\\s*[=≈]\\s*)+");
    private static final Pattern DEGREES = Pattern.compile("(?i)(?<=[\\d.½¼¾\\s])\\s*(?:degrees?|degs?|°)\\.?\\s*$");
    private static final Pattern BEHIND = Pattern.compile("\\s*[.!;,]+$");

    private AnswerCleanup() {}

    static String answer(String typed) {
        String text = BLANKS.matcher(typed).replaceAll(" ").strip();
        text = Numeral.hyphened(text);
        text = AHEAD.matcher(text).replaceFirst("");
        // A unit may end in a point of its own ("in."); the unit reader does without it.
        return BEHIND.matcher(text).replaceFirst("").strip();
    }

    /**
     * "8 degrees" says no more than "8": where a temperature or a plain number (an angle is one here) is wanted, such a word
     * counts as no unit at all.
     */
    static String withoutDegrees(String typed, WrittenUnit wanted) {
        return wanted.isTemperature() || wanted.shown().isEmpty()
                ? DEGREES.matcher(typed).replaceFirst("")
                : typed;
    }
}
