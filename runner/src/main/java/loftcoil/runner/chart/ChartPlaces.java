package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Places of a chart that say something by themselves: where two curves cross, and stretches on which no curve has a value. */
final class ChartPlaces {

    /** More crossings than this are a tangle, not places to point at. */
    private static final int MOST_CROSSINGS = 4;

    private ChartPlaces() {}

    /**
     * Where two curves meet.
     *
     * @param one index of a curve
     * @param other index of the other
     * @param x position
     * @param y value of both there
     */
    record Crossing(int one, int other, double x, double y) {}

    /**
     * A stretch without a value.
     *
     * @param from where it begins
     * @param to where it ends
     */
    record Stretch(double from, double to) {}

    /** Crossings of curves over the same positions, by straight lines between points; none where there are very many. */
    static List<Crossing> crossings(ChartOrder order) {
        List<Crossing> found = new ArrayList<>();
        List<ChartOrder.Curve> curves = order.curves();
        for (int i = 0; i < curves.size(); i++) {
            for (int j = i + 1; j < curves.size(); j++) {
                boolean lines = isLine(curves.get(i)) && isLine(curves.get(j));
                if (lines && curves.get(i).xs().equals(curves.get(j).xs())) {
                    cross(curves.get(i), curves.get(j), i, j, found);
                }
            }
        }
        return found.size() > MOST_CROSSINGS ? List.of() : found;
    }

    /** Between a few points, such as the months, a line only leads the eye: where two cross there says nothing. */
    private static boolean isLine(ChartOrder.Curve curve) {
        return !curve.dots() && curve.ys().size() > CurveShapes.FEW;
    }

    private static void cross(ChartOrder.Curve a, ChartOrder.Curve b, int i, int j, List<Crossing> found) {
        for (int at = 1; at < a.xs().size(); at++) {
            double before = a.ys().get(at - 1) - b.ys().get(at - 1);
            double after = a.ys().get(at) - b.ys().get(at);
            if (before * after < 0) {
                double part = before / (before - after);
                double x = a.xs().get(at - 1) + part * (a.xs().get(at) - a.xs().get(at - 1));
                double y = a.ys().get(at - 1) + part * (a.ys().get(at) - a.ys().get(at - 1));
                found.add(new Crossing(i, j, x, y));
            }
        }
    }

    /** Stretches between neighbouring positions on which no curve has a value, where the order says what that means. */
    static List<Stretch> empty(ChartOrder order) {
        List<Stretch> found = new ArrayList<>();
        if (order.empty().isEmpty()) {
            return found;
        }
        TreeSet<Double> all = new TreeSet<>();
        TreeSet<Double> filled = new TreeSet<>();
        for (ChartOrder.Curve curve : order.curves()) {
            all.addAll(curve.xs());
            Points points = Points.of(curve);
            for (int i = 0; i < points.size(); i++) {
                filled.add(points.x(i));
            }
        }
        double from = Double.NaN;
        double last = Double.NaN;
        for (double x : all) {
            boolean empty = !filled.contains(x);
            if (empty && Double.isNaN(from)) {
                from = Double.isNaN(last) ? x : last;
            } else if (!empty && !Double.isNaN(from)) {
                found.add(new Stretch(from, x));
                from = Double.NaN;
            }
            last = x;
        }
        if (!Double.isNaN(from) && last > from) {
            found.add(new Stretch(from, last));
        }
        return found;
    }
}
