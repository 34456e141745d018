package loftcoil.runner.check;

import java.util.regex.Pattern;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.unit.WrittenUnit;

/** Takes from an answer what carries no meaning: odd blanks, control characters, “about”, a full stop at the end. */
final class AnswerCleanup {

    /** Blanks of all kinds, control characters, and marks that show nothing, such as those of direction. */
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}]+");

    private static final Pattern AHEAD = Pattern.compile(
            "(?i)^(?:(?:about|approximately|approx\\.?|roughly|around|nearly|almost|just (?:over|under|above|below)|a (?:bit|little) (?:over|under|more than|less than)|maybe|perhaps|say|some|circa|ca\\.|c\\.|it is|it's)\\s*|[~≈=]\\s*"
                    + "|\\p{L}{1,12}\\s*[=≈]\\s*)+");
    private static final Pattern DEGREES = Pattern.compile("(?i)(?<=[\\d.½¼¾\\s])\\s*(?:degrees?|degs?|°)\\.?\\s*$");
    private static final Pattern BEHIND = Pattern.compile("\\s*[.!;,]+$");

    private static final Pattern NONE = Pattern.compile("(?i)\\s*(?:none|no|nil|not any|not one)\\s*[.!]?\\s*");

    /** What a measure is said to be of, and how sure of it somebody is; neither changes the number. */
    private static final Pattern SAID_BEHIND = Pattern.compile(
            "(?i)(?<=[\\p{L}\"”″'’′])\\s+(?:high|tall|long|wide|deep|thick|across|round"
                    + "|or so|or thereabouts|more or less|give or take|roughly|about|approximately|(?:above|over|off|from|up from) the floor)$");

    private AnswerCleanup() {}

    static String answer(String typed) {
        String text = BLANKS.matcher(typed).replaceAll(" ").strip();
        text = Numeral.hyphened(text);
        text = AHEAD.matcher(text).replaceFirst("");
        text = NumberWords.inFigures(text);
        // A unit may end in a point of its own ("in."); the unit reader does without it.
        text = BEHIND.matcher(text).replaceFirst("");
        return SAID_BEHIND.matcher(text).replaceFirst("").strip();
    }

    /** Where pieces are counted, none of them is nought. */
    static String noneAsNought(String typed) {
        return NONE.matcher(typed).matches() ? "0" : typed;
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
