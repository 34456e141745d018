package loftcoil.runner.session;

/** Values as shown: JShell's own text, but plain strings without their quotes. */
final class ValueText {

    /** What is kept of one value. The way between two Java machines is at its end at 21 845. */
    private static final int LONGEST = 20_000;

    /** Stands between what is kept and how much is not; a text that is not cut is shorter than that. */
    private static final char CUT = '\0';

    private ValueText() {}

    /** The text of a value, cut to what can be sent. */
    static String fitted(String text) {
        if (text.length() <= LONGEST) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
        return text.substring(0, end) + CUT + (text.length() - end);
    }

    /** The value as shown, with a word on how much is missing where it was cut. */
    static String of(String text, String type) {
        int cut = text.length() > LONGEST ? text.lastIndexOf(CUT) : -1;
        String kept = cut < 0 ? text : text.substring(0, cut);
        boolean quoted = type.equals("String") && kept.startsWith("\"") && (cut >= 0 || kept.endsWith("\""));
        if (cut < 0) {
            // JShell escapes what stands between the quotes as Java source does.
            return quoted && text.length() >= 2
                    ? text.substring(1, text.length() - 1).translateEscapes()
                    : text;
        }
        long missing = Long.parseLong(text.substring(cut + 1)) - (quoted ? 1 : 0);
        String shown = quoted ? withoutHalfEscape(kept.substring(1)).translateEscapes() : kept;
        return shown + "\n… the rest is not shown: " + missing + " more characters";
    }

    /** An escape that the cut went through is left out. */
    private static String withoutHalfEscape(String text) {
        int at = text.length();
        while (at > 0 && text.charAt(at - 1) == '\\') {
            at--;
        }
        return (text.length() - at) % 2 == 0 ? text : text.substring(0, text.length() - 1);
    }
}
