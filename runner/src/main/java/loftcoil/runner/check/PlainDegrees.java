package loftcoil.runner.check;

import java.util.regex.Pattern;
import loftcoil.runner.unit.WrittenUnit;

/**
 * "8 degrees" says no more than "8": where a temperature or a plain number (an angle is one here) is wanted, such a word
 * counts as no unit at all.
 */
final class PlainDegrees {

    private static final Pattern DEGREES = Pattern.compile("(?i)(?<=[\\d.½¼¾\\s])\\s*(?:degrees?|degs?|°)\\.?\\s*$");

    private PlainDegrees() {}

    /** The answer without that word where a temperature or a plain number is wanted; else as it was typed. */
    static String taken(String typed, WrittenUnit wanted) {
        return wanted.isTemperature() || wanted.shown().isEmpty()
                ? DEGREES.matcher(typed).replaceFirst("")
                : typed;
    }
}
