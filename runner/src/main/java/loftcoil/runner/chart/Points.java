package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The finite points of a curve in order.
 *
 * @param curve whose they are
 * @param at their places in its lists
 */
record Points(ChartOrder.Curve curve, List<Integer> at) {

    static Points of(ChartOrder.Curve curve) {
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < curve.ys().size(); i++) {
            if (Double.isFinite(curve.ys().get(i))) {
                at.add(i);
            }
        }
        return new Points(curve, at);
    }

    boolean isEmpty() {
        return at.isEmpty();
    }

    int size() {
        return at.size();
    }

    double x(int i) {
        return curve.xs().get(at.get(i));
    }

    double y(int i) {
        return curve.ys().get(at.get(i));
    }

    /** Index of the first highest point. */
    int highest() {
        int best = 0;
        for (int i = 1; i < size(); i++) {
            best = y(i) > y(best) ? i : best;
        }
        return best;
    }

    /** Index of the first lowest point. */
    int lowest() {
        int best = 0;
        for (int i = 1; i < size(); i++) {
            best = y(i) < y(best) ? i : best;
        }
        return best;
    }

    /** Where neighbours without a gap between them lie on either side of zero, by straight line between them. */
    List<Double> crossings() {
        List<Double> crossings = new ArrayList<>();
        for (int i = 1; i < size(); i++) {
            boolean neighbours = at.get(i) == at.get(i - 1) + 1;
            if (neighbours && (y(i) > 0) != (y(i - 1) > 0) && y(i) != y(i - 1)) {
                crossings.add(x(i - 1) - y(i - 1) * (x(i) - x(i - 1)) / (y(i) - y(i - 1)));
            }
        }
        return crossings;
    }
}
