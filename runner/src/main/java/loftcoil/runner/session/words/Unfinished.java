package loftcoil.runner.session.words;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Finds what a snippet that ends too early has left open. */
public final class Unfinished {

    /** Far more than anybody nests by hand; the compiler's stack ends at some 2,000. */
    private static final int MOST_DEPTH = 300;

    private Unfinished() {}

    /**
     * The innermost thing left open.
     *
     * @param mark the opening mark; a blank where only an end is missing
     * @param offset where it stands
     */
    public record Open(char mark, int offset) {

        /** What is missing, in plain words, given the line the mark stands on. */
        public String words(int line) {
            String where = " opened on line " + line + ".";
            return switch (mark) {
                case '{' -> "A closing brace } is missing for the one" + where;
                case '(' -> "A closing bracket ) is missing for the one" + where;
                case '[' -> "A closing bracket ] is missing for the one" + where;
                case '/' -> "The comment that starts on line " + line + " has no end: write */ after it.";
                case '"' -> "The text that starts on line " + line + " has no closing quote.";
                default -> "The last statement is not finished: something is missing at its end.";
            };
        }
    }

    /** What is open at the end of a source, read from an offset on. */
    public static Open in(String source, int from) {
        return in(source, from, new ArrayDeque<>(), Integer.MAX_VALUE);
    }

    /** The first bracket or brace that stands within more others than Java can be expected to follow. */
    public static Optional<Open> tooDeep(String source, int from) {
        Deque<Open> open = new ArrayDeque<>();
        Open end = in(source, from, open, MOST_DEPTH);
        return open.size() > MOST_DEPTH ? Optional.of(end) : Optional.empty();
    }

    private static Open in(String source, int from, Deque<Open> open, int most) {
        int at = from;
        while (at < source.length() && open.size() <= most) {
            char c = source.charAt(at);
            if (source.startsWith("//", at)) {
                int end = source.indexOf('\n', at);
                at = end < 0 ? source.length() : end;
            } else if (source.startsWith("/*", at)) {
                int end = source.indexOf("*/", at + 2);
                if (end < 0) {
                    return new Open('/', at);
                }
                at = end + 2;
            } else if (source.startsWith("\"\"\"", at)) {
                int end = source.indexOf("\"\"\"", at + 3);
                if (end < 0) {
                    return new Open('"', at);
                }
                at = end + 3;
            } else if (c == '"' || c == '\'') {
                at = afterQuoted(source, at);
            } else {
                mark(open, c, at);
                at++;
            }
        }
        return open.isEmpty()
                ? new Open(' ', Math.max(from, source.stripTrailing().length()))
                : open.peek();
    }

    private static void mark(Deque<Open> open, char c, int at) {
        if (c == '{' || c == '(' || c == '[') {
            open.push(new Open(c, at));
        } else if ((c == '}' || c == ')' || c == ']') && !open.isEmpty()) {
            open.pop();
        }
    }

    private static int afterQuoted(String source, int from) {
        char quote = source.charAt(from);
        int at = from + 1;
        while (at < source.length() && source.charAt(at) != quote && source.charAt(at) != '\n') {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        return at + 1;
    }
}
