package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * Brings the Java of a snippet into the form that the JDK's own shell can read from a file. The shell takes a line as soon as it
 * could end there, so a chain that goes on with a dot on the next line, or an {@code else} below its brace, must stand on one
 * line. What stands within brackets may keep its lines. A remark in the middle of a line that is joined moves above it.
 */
final class ShellSource {

    private static final String GOES_ON = "(?s)(?:\\.[^\\d]|else\\b|catch\\b|finally\\b|[?:+*/%&|=<>,)-]).*";

    private final String source;
    private final List<String> done = new ArrayList<>();
    private final StringBuilder piece = new StringBuilder();
    private int at;
    private int depth;

    private ShellSource(String source) {
        this.source = source;
    }

    /** The same Java, line by line for the shell. */
    static String of(String snippet) {
        ShellSource shell = new ShellSource(snippet.replace("\r\n", "\n"));
        shell.read();
        return String.join("\n", shell.done) + "\n";
    }

    private void read() {
        while (at < source.length()) {
            char c = source.charAt(at);
            if (source.startsWith("\"\"\"", at)) {
                copyTo(source.indexOf("\"\"\"", at + 3), 3);
            } else if (c == '"' || c == '\'') {
                quoted(c);
            } else if (source.startsWith("//", at)) {
                remark();
            } else if (source.startsWith("/*", at)) {
                copyTo(source.indexOf("*/", at + 2), 2);
            } else if (c == '\n') {
                lineEnd();
            } else {
                depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
                take(c);
            }
        }
        flush();
    }

    private void take(char c) {
        piece.append(c < 0x80 ? Character.toString(c) : String.format("\\u%04x", (int) c));
        at++;
    }

    private void quoted(char quote) {
        take(quote);
        while (at < source.length() && source.charAt(at) != quote && source.charAt(at) != '\n') {
            if (source.charAt(at) == '\\' && at + 1 < source.length()) {
                take('\\');
            }
            take(source.charAt(at));
        }
        if (at < source.length() && source.charAt(at) == quote) {
            take(quote);
        }
    }

    /** Copies up to a closing mark, which may be missing. */
    private void copyTo(int mark, int length) {
        int end = mark < 0 ? source.length() : mark + length;
        while (at < end) {
            if (source.charAt(at) == '\n') {
                piece.append('\n');
                at++;
            } else {
                take(source.charAt(at));
            }
        }
    }

    private void remark() {
        int end = source.indexOf('\n', at);
        String words = source.substring(at, end < 0 ? source.length() : end);
        at += words.length();
        if (depth > 0 || piece.toString().isBlank() || !goesOn(at)) {
            piece.append(words);
        } else {
            // Above the piece it belongs to.
            done.add(words);
        }
    }

    private void lineEnd() {
        at++;
        if (depth > 0) {
            piece.append('\n');
        } else if (goesOn(at)) {
            String soFar = piece.toString().stripTrailing();
            piece.setLength(0);
            piece.append(soFar).append(' ');
            while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
                at++;
            }
        } else {
            flush();
        }
    }

    /** True where what follows belongs to the piece that has begun. */
    private boolean goesOn(int from) {
        String begun = piece.toString().strip();
        String rest = source.substring(from).stripLeading();
        boolean remarkNext = rest.startsWith("//") || rest.startsWith("/*");
        if (begun.isEmpty() || begun.startsWith("//") || rest.isEmpty() || remarkNext) {
            return false;
        }
        boolean blankLine = source.substring(from).matches("(?s)\\n?[ \\t]*\\n.*") && !rest.startsWith(".");
        boolean openEnd = begun.matches("(?s).*(?:[=+*/%&|?:<,(-]|\\breturn)");
        return (rest.matches(GOES_ON) && !begun.endsWith(";")) || (openEnd && !blankLine);
    }

    private void flush() {
        done.add(piece.toString().stripTrailing());
        piece.setLength(0);
    }
}
