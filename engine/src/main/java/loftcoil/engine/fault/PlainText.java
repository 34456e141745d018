package loftcoil.engine.fault;

import java.util.Locale;

/**
 * Text that is only text. Control characters in a name could move the cursor or colour of a terminal that shows it, and marks of
 * direction could turn round what stands beside it.
 */
public final class PlainText {

    private static final int LONGEST_SHOWN = 60;

    private PlainText() {}

    /** Whether a text of one line is only text. */
    public static boolean isLine(String text) {
        return is(text, "");
    }

    /** Whether a text of several lines is only text. */
    public static boolean isLines(String text) {
        return is(text, "\n\r\t");
    }

    private static boolean is(String text, String allowed) {
        for (int i = 0; i < text.length(); i++) {
            if (controls(text.charAt(i)) && allowed.indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** The fault in a text that is not. */
    public static Fault fault(String path, String text) {
        String sign = text.chars()
                .filter(PlainText::controls)
                .mapToObj(control -> String.format(Locale.ROOT, "U+%04X", control))
                .findFirst()
                .orElse("");
        return new Fault(
                path,
                "\"" + cut(text) + "\" with the control character " + sign,
                "text without control characters",
                "what shows it could be garbled by them");
    }

    /** The text without control characters and no longer than a line can show. */
    public static String cut(String text) {
        return cut(text, LONGEST_SHOWN);
    }

    static String cut(String text, int longest) {
        int[] signs = text.codePoints()
                .limit(longest)
                .map(sign -> controls(sign) ? ' ' : sign)
                .toArray();
        String shown = new String(signs, 0, signs.length);
        return text.codePointCount(0, text.length()) <= longest ? shown : shown + "…";
    }

    private static boolean controls(int sign) {
        return Character.isISOControl(sign)
                || sign == 0x2028
                || sign == 0x2029
                || (sign >= 0x202A && sign <= 0x202E)
                || (sign >= 0x2066 && sign <= 0x2069);
    }
}
