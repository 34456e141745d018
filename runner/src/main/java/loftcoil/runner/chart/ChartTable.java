package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A chart's numbers as a short table: every position where there are few, evenly picked ones where there are many.
 *
 * @param columns headings: the horizontal axis, then each curve
 * @param rows the numbers as text; a dash in a gap, blank where a curve has no point
 */
record ChartTable(List<String> columns, List<List<String>> rows) {

    private static final int MOST_ROWS = 15;

    static ChartTable of(ChartOrder order) {
        List<String> columns = new ArrayList<>();
        columns.add(heading(order.across(), ""));
        for (ChartOrder.Curve curve : order.curves()) {
            columns.add(heading(order.up(), curve.name()));
        }
        List<Double> positions = picked(order);
        Digits across = Digits.forPositions(positions);
        List<Digits> digits =
                order.curves().stream().map(curve -> Digits.forAll(curve.ys())).toList();
        List<List<String>> rows = new ArrayList<>();
        for (double x : positions) {
            List<String> row = new ArrayList<>();
            row.add(across.text(x));
            for (int i = 0; i < order.curves().size(); i++) {
                ChartOrder.Curve curve = order.curves().get(i);
                int at = curve.xs().indexOf(x);
                row.add(at < 0 ? "" : digits.get(i).text(curve.ys().get(at)));
            }
            rows.add(row);
        }
        return new ChartTable(columns, rows);
    }

    static String heading(ChartOrder.Axis axis, String name) {
        String label = name.isEmpty() ? axis.label() : name;
        return axis.unit().isEmpty() ? label : label + " [" + axis.unit() + "]";
    }

    private static List<Double> picked(ChartOrder order) {
        TreeSet<Double> all = new TreeSet<>();
        order.curves().forEach(curve -> all.addAll(curve.xs()));
        List<Double> positions = new ArrayList<>(all);
        if (positions.size() <= MOST_ROWS) {
            return positions;
        }
        int stride = stride(positions.size() - 1);
        List<Double> picked = new ArrayList<>();
        for (int i = 0; i < positions.size(); i += stride) {
            picked.add(positions.get(i));
        }
        double last = positions.get(positions.size() - 1);
        if (picked.get(picked.size() - 1) != last) {
            picked.add(last);
        }
        return picked;
    }

    /** A round stride gives round positions where the steps are round. */
    private static int stride(int steps) {
        int ten = 1;
        while (true) {
            for (int digit : new int[] {1, 2, 5}) {
                if (steps / (digit * ten) <= MOST_ROWS - 2) {
                    return digit * ten;
                }
            }
            ten *= 10;
        }
    }
}
