package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The layout of a chart in its own units, which are pixels at {@value #WIDTH} wide. Text is sized so that a page may
 * enlarge it by a fifth on a narrow screen.
 *
 * @param across ticks along the horizontal axis, within the range of the data
 * @param up ticks along the vertical axis, enclosing the data
 * @param low leftmost position shown
 * @param high rightmost position shown
 * @param left where the plotting area begins
 * @param top where the plotting area begins
 * @param legendRows rows of names below
 */
record ChartFrame(Ticks across, Ticks up, double low, double high, int left, int top, int legendRows) {

    static final int WIDTH = 480;
    static final int PLOT_HEIGHT = 270;
    static final int RIGHT = 22;
    static final int BELOW = 58;
    static final int ROW = 22;

    /** About the width of a letter at the largest text a page may set, a fifth above ours. */
    static final double LETTER = 9.2;

    /** Width of a figure at that size. */
    private static final double FIGURE = 10.4;

    private static final int TICKS_ACROSS = 6;
    private static final int TICKS_UP = 5;

    static ChartFrame of(ChartOrder order, int top, int legendRows) {
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (ChartOrder.Curve curve : order.curves()) {
            xs.addAll(curve.xs());
            curve.ys().stream().filter(Double::isFinite).forEach(ys::add);
        }
        order.marks().forEach(mark -> xs.add(mark.at()));
        Ticks up = Ticks.around(least(ys), most(ys), TICKS_UP);
        double low = least(xs);
        double high = most(xs);
        Ticks across = Ticks.within(low, high, TICKS_ACROSS);
        if (!(high > low)) {
            low = across.low();
            high = across.high();
        }
        int widest =
                up.values().stream().mapToInt(v -> up.text(v).length()).max().orElse(1);
        int left = 18 + (int) Math.ceil(widest * FIGURE);
        return new ChartFrame(across, up, low, high, left, top, legendRows);
    }

    private static double least(List<Double> values) {
        return values.stream().min(Double::compare).orElse(0.0);
    }

    private static double most(List<Double> values) {
        return values.stream().max(Double::compare).orElse(1.0);
    }

    int plotWidth() {
        return WIDTH - left - RIGHT;
    }

    int right() {
        return WIDTH - RIGHT;
    }

    int bottom() {
        return top + PLOT_HEIGHT;
    }

    int height() {
        return bottom() + BELOW + legendRows * ROW;
    }

    /** Horizontal place of a position. */
    double x(double at) {
        return left + (at - low) / (high - low) * plotWidth();
    }

    /** Vertical place of a value. */
    double y(double value) {
        return top + (up.high() - value) / (up.high() - up.low()) * PLOT_HEIGHT;
    }
}
