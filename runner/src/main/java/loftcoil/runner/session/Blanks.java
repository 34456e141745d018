package loftcoil.runner.session;

/** Finds where Java goes on after white space, comments and stray semicolons. */
final class Blanks {

    private Blanks() {}

    /** First offset at or after {@code from} where something stands that must be read; the length where nothing does. */
    static int after(String source, int from) {
        int at = from;
        while (at < source.length()) {
            char c = source.charAt(at);
            if (Character.isWhitespace(c) || c == ';') {
                at++;
            } else if (source.startsWith("//", at)) {
                int end = source.indexOf('\n', at);
                at = end < 0 ? source.length() : end + 1;
            } else if (source.startsWith("/*", at) && source.indexOf("*/", at + 2) >= 0) {
                at = source.indexOf("*/", at + 2) + 2;
            } else {
                return at;
            }
        }
        return at;
    }
}
