package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at spaces. A word longer than the line keeps a line of its own, unbroken. */
public final class Wrap {

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
