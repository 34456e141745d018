package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.List;

/** Columns of words, set under their headings, numbers to the right. */
final class TextTable {

    private TextTable() {}

    /**
     * Sets a table.
     *
     * @param columns the headings
     * @param rows the words, each row as long as the headings
     */
    static List<String> lines(List<String> columns, List<List<String>> rows) {
        int[] widths = new int[columns.size()];
        measure(widths, columns);
        rows.forEach(row -> measure(widths, row));
        List<String> lines = new ArrayList<>();
        lines.add(line(widths, columns));
        rows.forEach(row -> lines.add(line(widths, row)));
        return lines;
    }

    private static void measure(int[] widths, List<String> row) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], row.get(i).length());
        }
    }

    private static String line(int[] widths, List<String> row) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append("  ")
                    .append(" ".repeat(widths[i] - row.get(i).length()))
                    .append(row.get(i));
        }
        return line.toString();
    }
}
