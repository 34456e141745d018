package loftcoil.runner.chart;

import java.util.List;

/**
 * A chart as data: what is drawn, without how.
 *
 * @param title what the chart shows
 * @param across the horizontal axis
 * @param up the vertical axis
 * @param curves the lines, at least one
 * @param marks vertical lines with a word, such as where it boils
 * @param empty what it means where a curve has no value, such as that the loop stands still; empty where nothing is said
 * @param crossing what it means where two curves cross, such as that the loop runs there; empty where it means nothing
 */
public record ChartOrder(
        String title, Axis across, Axis up, List<Curve> curves, List<Mark> marks, String empty, String crossing) {

    /** An order that says nothing of where a curve has no value, nor of where two cross. */
    public ChartOrder(String title, Axis across, Axis up, List<Curve> curves, List<Mark> marks) {
        this(title, across, up, curves, marks, "", "");
    }

    /** The same chart with other axes, curves and marks. */
    public ChartOrder with(Axis acrossNow, Axis upNow, List<Curve> curvesNow, List<Mark> marksNow) {
        return new ChartOrder(title, acrossNow, upNow, curvesNow, marksNow, empty, crossing);
    }

    /** Keeps its own copies. */
    public ChartOrder {
        curves = List.copyOf(curves);
        marks = List.copyOf(marks);
    }

    /**
     * An axis.
     *
     * @param label what is measured along it
     * @param unit its unit; empty for a plain number
     */
    public record Axis(String label, String unit) {}

    /**
     * A line through points, or the points alone.
     *
     * @param name what the line is
     * @param xs positions along the horizontal axis, in its unit
     * @param ys positions along the vertical axis, in its unit, as many as {@code xs}; NaN is a gap
     * @param dots true for single points without a line between them
     * @param end why it ends before the axis does, such as that the water boils; empty where nothing is said
     */
    public record Curve(String name, List<Double> xs, List<Double> ys, boolean dots, String end) {

        /** Keeps its own copies, and refuses positions and values that do not pair. */
        public Curve {
            xs = List.copyOf(xs);
            ys = List.copyOf(ys);
            if (xs.size() != ys.size()) {
                throw new IllegalArgumentException(
                        "curve " + name + ": " + ys.size() + " values; allowed: as many as positions, " + xs.size());
            }
        }

        /** A line. */
        public Curve(String name, List<Double> xs, List<Double> ys) {
            this(name, xs, ys, false, "");
        }

        /** The same line with why it ends. */
        Curve ending(String why) {
            return new Curve(name, xs, ys, dots, why);
        }
    }

    /**
     * A vertical line at a place worth seeing.
     *
     * @param at position along the horizontal axis, in its unit
     * @param words what is there
     */
    public record Mark(double at, String words) {}
}
