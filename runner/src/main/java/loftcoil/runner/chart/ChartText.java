package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;

/** A chart as plain text, where there is nothing to draw on: title, what it says, and its numbers in columns. */
public final class ChartText {

    private ChartText() {}

    /** Several lines, the last ended too. */
    public static String of(ChartOrder order) {
        ChartTable table = ChartTable.of(order);
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.columns());
        lines.addAll(table.rows());
        StringBuilder text = new StringBuilder(order.title()).append('\n');
        for (List<String> line : lines) {
            for (int i = 0; i < line.size(); i++) {
                text.append(i == 0 ? "" : "  ").append(padded(line.get(i), width(lines, i)));
            }
            text.append('\n');
        }
        for (ChartOrder.Mark mark : order.marks()) {
            text.append("at ").append(Digits.forAll(List.of(mark.at())).text(mark.at()));
            text.append(": ").append(mark.words()).append('\n');
        }
        return text.toString();
    }

    private static int width(List<List<String>> lines, int column) {
        return lines.stream().mapToInt(line -> line.get(column).length()).max().orElse(0);
    }

    private static String padded(String cell, int width) {
        return " ".repeat(width - cell.length()) + cell;
    }
}
