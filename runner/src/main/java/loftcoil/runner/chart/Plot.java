package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.chart.ChartOrder.Axis;
import loftcoil.runner.chart.ChartOrder.Curve;
import loftcoil.runner.chart.ChartOrder.Mark;

/**
 * What a snippet writes to draw a chart. Each call gives a new plot; {@link #show} shows it. Where there is nobody to
 * draw it, as in a plain Java shell, it is written as a file.
 */
public final class Plot {

    /** More points than this say no more on a page. */
    static final int MOST_POINTS = 10_000;

    private static volatile Consumer<ChartOrder> screen = order -> System.out.print(PlotFile.write(order));

    private final ChartOrder order;
    private final List<Double> xs;

    private Plot(ChartOrder order, List<Double> xs) {
        this.order = order;
        this.xs = xs;
    }

    /** A plot with a title and nothing on it yet. */
    public static Plot plot(String title) {
        return new Plot(new ChartOrder(title, new Axis("", ""), new Axis("", ""), List.of(), List.of()), List.of());
    }

    /**
     * Numbers from one to another in equal steps, both ends included. Each is counted from the first, so that nothing
     * drifts.
     *
     * @param from the first
     * @param to the last, not below {@code from}; left out where no whole number of steps reaches it
     * @param by the step, above zero
     * @throws RefusedException where a number is not finite, the step is not above zero, or more than 10 000 come out
     */
    public static double[] steps(double from, double to, double by) {
        List<Fault> faults = new ArrayList<>();
        if (!Double.isFinite(from)) {
            faults.add(new Fault("steps.from", "" + from, "a finite number", ""));
        }
        if (!(to >= from) || !Double.isFinite(to)) {
            faults.add(new Fault("steps.to", "" + to, "a finite number, " + from + " or more", ""));
        }
        if (!(by > 0) || !Double.isFinite(by)) {
            faults.add(new Fault("steps.by", "" + by, "above 0", "the step goes from the smaller to the larger"));
        }
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        // A millionth of a step forgives that 0.1 is not exactly a tenth.
        double count = Math.floor((to - from) / by + 1e-6) + 1;
        if (!(count <= MOST_POINTS)) {
            throw refused("steps.by", "" + by, "at most " + MOST_POINTS + " steps", "that would be too many to draw");
        }
        double[] steps = new double[(int) count];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = Math.min(from + i * by, to);
        }
        return steps;
    }

    /**
     * The value of a function at each of some numbers.
     *
     * @param xs the numbers
     * @param of the function; NaN makes a gap in a curve
     */
    public static double[] each(double[] xs, DoubleUnaryOperator of) {
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            ys[i] = of.applyAsDouble(xs[i]);
        }
        return ys;
    }

    /**
     * Sets the horizontal axis.
     *
     * @param label what is measured along it
     * @param unit its unit; empty for a plain number
     * @param values the positions that curves are given at
     */
    public Plot across(String label, String unit, double[] values) {
        for (double value : values) {
            requireFinite("across", value);
        }
        return new Plot(order.with(new Axis(label, unit), order.up(), order.curves(), order.marks()), listOf(values));
    }

    /**
     * Sets the vertical axis.
     *
     * @param label what is measured along it
     * @param unit its unit; empty for a plain number
     */
    public Plot up(String label, String unit) {
        return with(new Axis(label, unit), order.curves(), order.marks());
    }

    /**
     * Adds a curve over the positions given to {@link #across}.
     *
     * @param name what it is
     * @param values as many as there are positions; NaN makes a gap
     * @throws RefusedException where there are more or fewer values than positions
     */
    public Plot curve(String name, double[] values) {
        if (values.length != xs.size()) {
            throw refused(
                    "curve \"" + name + "\"",
                    values.length + " values",
                    "as many as across() has: " + xs.size(),
                    xs.isEmpty() ? "across(…) comes before curve(…)" : "");
        }
        return with(order.up(), joined(order.curves(), new Curve(name, xs, listOf(values))), order.marks());
    }

    /**
     * Says why the curve that was added last ends before the axis does.
     *
     * @param words such as {@code "boils"}; it stands beside each end
     * @throws RefusedException where there is no curve yet
     */
    public Plot until(String words) {
        if (order.curves().isEmpty()) {
            throw refused("until \"" + words + "\"", "no curve", "after a curve(…)", "");
        }
        List<Curve> curves = new ArrayList<>(order.curves());
        int last = curves.size() - 1;
        curves.set(last, curves.get(last).ending(words));
        return with(order.up(), curves, order.marks());
    }

    /**
     * Adds single points of their own positions, such as measurements.
     *
     * @param name what they are
     * @param at positions along the horizontal axis
     * @param values as many as there are positions
     * @throws RefusedException where there are more or fewer values than positions
     */
    public Plot points(String name, double[] at, double[] values) {
        if (at.length != values.length) {
            throw refused(
                    "points \"" + name + "\"", values.length + " values", "as many as positions: " + at.length, "");
        }
        for (double position : at) {
            requireFinite("points \"" + name + "\"", position);
        }
        Curve curve = new Curve(name, listOf(at), listOf(values), true, "");
        return with(order.up(), joined(order.curves(), curve), order.marks());
    }

    /**
     * Adds a vertical line with words, at a place worth seeing.
     *
     * @param at position along the horizontal axis
     * @param words what is there
     */
    public Plot mark(double at, String words) {
        requireFinite("mark \"" + words + "\"", at);
        return with(order.up(), order.curves(), joined(order.marks(), new Mark(at, words)));
    }

    /**
     * Says what it means where a curve has no value.
     *
     * @param words such as {@code "stands still or boils"}
     */
    public Plot empty(String words) {
        return new Plot(
                new ChartOrder(
                        order.title(),
                        order.across(),
                        order.up(),
                        order.curves(),
                        order.marks(),
                        words,
                        order.crossing()),
                xs);
    }

    /**
     * Says what it means where two curves cross, and rings the place.
     *
     * @param words such as {@code "runs here"}
     */
    public Plot crossing(String words) {
        return new Plot(
                new ChartOrder(
                        order.title(), order.across(), order.up(), order.curves(), order.marks(), order.empty(), words),
                xs);
    }

    /**
     * Shows the plot.
     *
     * @throws RefusedException where there is no curve or none has a single number
     */
    public void show() {
        if (order.curves().isEmpty()) {
            throw refused("plot \"" + order.title() + "\"", "no curve", "at least one curve(…) before show()", "");
        }
        boolean any = order.curves().stream().flatMap(c -> c.ys().stream()).anyMatch(Double::isFinite);
        if (!any) {
            throw refused(
                    "plot \"" + order.title() + "\"",
                    "no number at all",
                    "at least one finite number",
                    "every value is missing, so there is nothing to draw");
        }
        screen.accept(order);
    }

    /** The plot as data. */
    public ChartOrder order() {
        return order;
    }

    /**
     * Says who draws what is shown from now on in this Java machine.
     *
     * @param drawer takes each chart in order
     */
    public static void sendTo(Consumer<ChartOrder> drawer) {
        screen = drawer;
    }

    private Plot with(Axis up, List<Curve> curves, List<Mark> marks) {
        return new Plot(order.with(order.across(), up, curves, marks), xs);
    }

    private static <T> List<T> joined(List<T> list, T more) {
        List<T> all = new ArrayList<>(list);
        all.add(more);
        return all;
    }

    private static List<Double> listOf(double[] values) {
        return java.util.Arrays.stream(values).boxed().toList();
    }

    private static void requireFinite(String path, double value) {
        if (!Double.isFinite(value)) {
            throw refused(path, "" + value, "a finite number", "");
        }
    }

    private static RefusedException refused(String path, String given, String allowed, String why) {
        return new RefusedException(List.of(new Fault(path, given, allowed, why)));
    }
}
