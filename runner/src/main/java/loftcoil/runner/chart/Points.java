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

    /** Those with a gap or an end on either side. */
    Points alone() {
        List<Integer> alone = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            boolean before = i > 0 && at.get(i - 1) == at.get(i) - 1;
            boolean after = i + 1 < size() && at.get(i + 1) == at.get(i) + 1;
            if (!before && !after) {
                alone.add(at.get(i));
            }
        }
        return new Points(curve, alone);
    }

    /**
     * Where the curve passes from one side of zero to the other, by straight lines between its points. Touching zero, or
     * beginning or ending there, is no crossing; neither is a jump over a gap.
     */
    List<Double> crossings() {
        List<Double> crossings = new ArrayList<>();
        int side = 0;
        double reached = Double.NaN;
        for (int i = 0; i < size(); i++) {
            if (i > 0 && at.get(i) != at.get(i - 1) + 1) {
                side = 0;
            }
            int now = (int) Math.signum(y(i));
            if (now == 0) {
                reached = x(i);
                continue;
            }
            if (side != 0 && now != side) {
                crossings.add(y(i - 1) == 0 ? reached : between(i - 1, i));
            }
            side = now;
        }
        return crossings;
    }

    private double between(int a, int b) {
        return x(a) - y(a) * (x(b) - x(a)) / (y(b) - y(a));
    }
}
