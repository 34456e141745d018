package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at spaces. A word longer than the line keeps a line of its own, unbroken. */
public final class Wrap {

    private static final int HANG = 2;
    private static final String GUTTER = " | ";

    private Wrap() {}

    /**
     * Wraps one paragraph or list item. Following lines are indented to where the first line's text starts, so that
     * list items hang under their bullet.
     *
     * @param line text without line ends
     * @param width greatest line length, in characters, at least 1
     */
    public static List<String> lines(String line, int width) {
        return wrapped(leading(line), line.strip(), hang(line), width);
    }

    /**
     * Wraps a line of a list in two columns; following lines stand under the second.
     *
     * @param line text without line ends, at least as long as the first column
     * @param column where the second column begins, in characters
     * @param width greatest line length, in characters, at least 1
     */
    static List<String> hanging(String line, int column, int width) {
        return wrapped(line.substring(0, column), line.substring(column), column, width);
    }

    /** The same for each line of a list. */
    static List<String> hangingEach(String list, int column, int width) {
        return list.lines()
                .flatMap(line -> hanging(line, column, width).stream())
                .toList();
    }

    /**
     * Breaks a line that is too long at spaces and leaves all else in it as it stands: code, columns, and what Java has printed. What
     * follows hangs a little.
     *
     * @param line text without line ends
     * @param width greatest line length, in characters, at least 1
     */
    static List<String> kept(String line, int width) {
        List<String> lines = new ArrayList<>();
        String rest = line.stripTrailing();
        String start = "";
        String gutter = gutter(line);
        String hung = gutter + leading(line.substring(gutter.length()));
        String indent = hung + " ".repeat(Math.max(gutter.isEmpty() ? hang(line) - hung.length() : 0, HANG));
        while (start.length() + rest.length() > width) {
            int from = leading(rest).length();
            int at = rest.lastIndexOf(' ', width - start.length());
            if (at <= from && !gutter.isEmpty()) {
                at = rest.lastIndexOf('.', width - start.length());
            }
            at = at > from ? at : rest.indexOf(' ', from);
            if (at < 0) {
                break;
            }
            lines.add((start + rest.substring(0, at)).stripTrailing());
            rest = rest.substring(at).strip();
            start = indent.length() <= width / 2 ? indent : gutter;
        }
        lines.add(start + rest);
        return lines;
    }

    /** What numbers the lines of Java leaves a blank gutter below it. */
    private static String gutter(String line) {
        int bar = line.indexOf(GUTTER);
        boolean numbered = bar > 0 && line.substring(0, bar).strip().chars().allMatch(Character::isDigit);
        return numbered ? " ".repeat(bar) + GUTTER : "";
    }

    private static List<String> wrapped(String start, String text, int hang, int width) {
        String indent = " ".repeat(hang);
        List<String> wrapped = new ArrayList<>();
        StringBuilder current = new StringBuilder(start);
        boolean empty = true;
        for (String word : text.split("\\s+", -1)) {
            if (!empty && current.length() + 1 + word.length() > width) {
                wrapped.add(current.toString());
                current = new StringBuilder(indent);
                empty = true;
            }
            current.append(empty ? "" : " ").append(word);
            empty = false;
        }
        wrapped.add(current.toString());
        return wrapped;
    }

    private static String leading(String line) {
        return line.substring(0, line.length() - line.stripLeading().length());
    }

    private static int hang(String line) {
        int start = leading(line).length();
        String text = line.substring(start);
        if (text.startsWith("- ") || text.startsWith("* ")) {
            return start + 2;
        }
        int dot = text.indexOf(". ");
        boolean numbered = dot > 0 && dot <= 2 && text.substring(0, dot).chars().allMatch(Character::isDigit);
        return numbered ? start + dot + 2 : start;
    }
}
