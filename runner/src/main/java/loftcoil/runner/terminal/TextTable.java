package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Columns of words, set under their headings, numbers to the right. Headings and long words are broken where the screen is narrow;
 * where even that does not fit, some columns come below the others, each time with the first one.
 */
final class TextTable {

    private static final String GAP = "  ";

    private final List<List<String>> rows;
    private final int[] widths;

    private TextTable(List<List<String>> rows, int width) {
        this.rows = rows;
        int columns = rows.get(0).size();
        widths = IntStream.range(0, columns).map(this::longestWord).toArray();
        // What room is left goes, a character at a time, to the column that is broken most.
        for (int room = width - total(); room > 0; room--) {
            int widest = -1;
            for (int i = 0; i < columns; i++) {
                boolean gains = widths[i] < longest(i);
                if (gains && (widest < 0 || lines(i) > lines(widest))) {
                    widest = i;
                }
            }
            if (widest < 0) {
                break;
            }
            widths[widest]++;
        }
    }

    /**
     * Sets a table.
     *
     * @param columns the headings
     * @param rows the words, each row as long as the headings
     * @param width greatest line length, in characters
     */
    static List<String> lines(List<String> columns, List<List<String>> rows, int width) {
        List<List<String>> all = new ArrayList<>();
        all.add(columns);
        all.addAll(rows);
        List<String> lines = new ArrayList<>();
        int from = 1;
        do {
            int to = columns.size();
            TextTable table = new TextTable(part(all, from, to), width);
            while (table.total() > width && to > from + 1) {
                to--;
                table = new TextTable(part(all, from, to), width);
            }
            if (from > 1) {
                lines.add("");
            }
            lines.addAll(table.set());
            from = to;
        } while (from < columns.size());
        return lines;
    }

    private static List<List<String>> part(List<List<String>> rows, int from, int to) {
        return rows.stream()
                .map(row -> {
                    List<String> cells = new ArrayList<>(row.subList(0, 1));
                    cells.addAll(row.subList(Math.min(from, row.size()), to));
                    return cells;
                })
                .toList();
    }

    private List<String> set() {
        List<String> lines = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            List<List<String>> cells = new ArrayList<>();
            for (int i = 0; i < widths.length; i++) {
                cells.add(Wrap.lines(rows.get(r).get(i), widths[i]));
            }
            int high = cells.stream().mapToInt(List::size).max().orElse(1);
            for (int line = 0; line < high; line++) {
                lines.add(line(cells, line, high, r == 0));
            }
        }
        return lines;
    }

    /** Headings stand on their column, what is in it hangs from its first line. */
    private String line(List<List<String>> cells, int line, int high, boolean heading) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            List<String> cell = cells.get(i);
            int at = heading ? line - (high - cell.size()) : line;
            String words = at < 0 || at >= cell.size() ? "" : cell.get(at);
            String room = " ".repeat(Math.max(0, widths[i] - words.length()));
            text.append(GAP).append(isWords(i) ? words + room : room + words);
        }
        return text.toString().stripTrailing();
    }

    /** Whether a column holds words rather than numbers and what stands for one. */
    private boolean isWords(int column) {
        return rows.stream().skip(1).map(row -> row.get(column)).anyMatch(cell -> cell.matches(".*\\p{L}{3}.*"));
    }

    private int total() {
        return Arrays.stream(widths).sum() + GAP.length() * widths.length;
    }

    private int lines(int column) {
        return rows.stream()
                .mapToInt(row -> Wrap.lines(row.get(column), widths[column]).size())
                .max()
                .orElse(0);
    }

    private int longest(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }

    private int longestWord(int column) {
        return rows.stream()
                .flatMap(row -> Arrays.stream(row.get(column).split(" ", -1)))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }
}
