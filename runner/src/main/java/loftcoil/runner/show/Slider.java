package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.lesson.Drag;

/**
 * A value to drag, in the units of the reader; what is sent back is metric, {@code one} times what is shown and {@code nought} more.
 *
 * @param variable Java name of the {@code double} a snippet reads, or name of a change
 * @param from least value shown
 * @param to greatest value shown
 * @param by step between two stops, above zero
 * @param start value it starts at, that of the design where it has one, whether or not a stop is there
 * @param unit unit of all values, as shown
 * @param label what it is called
 * @param one one of that unit, in the metric one
 * @param nought the metric value at which it shows nought
 */
public record Slider(
        String variable,
        double from,
        double to,
        double by,
        double start,
        String unit,
        String label,
        double one,
        double nought) {

    /** Inches that a step of a length may have. */
    private static final double[] INCHES = {1 / 16.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1, 2, 3, 6, 12, 24, 60, 120};

    private static final double[] DIGITS = {1, 2, 5, 10};
    private static final double INCHES_IN_FOOT = 12;
    private static final double HAIR = 1e-9;
    private static final int DECIMALS = 6;

    /** A drag as a reader of those units sees it, with stops that are round there. */
    public static Slider of(Drag drag, Units units) {
        Optional<MeasureKind> kind = MeasureKind.ofUnit(drag.unit());
        if (kind.isEmpty()
                || units == Units.METRIC
                || units.typedUnit(kind.get()).equals(drag.unit())) {
            return new Slider(
                    drag.variable(), drag.from(), drag.to(), drag.by(), drag.start(), drag.unit(), drag.label(), 1, 0);
        }
        String unit = units.typedUnit(kind.get());
        double nought = units.metric(kind.get(), 0);
        double one = units.metric(kind.get(), 1) - nought;
        double by = roundStep(drag.by() / one, unit);
        double from = Math.ceil((drag.from() - nought) / one / by - HAIR) * by;
        double to = Math.floor((drag.to() - nought) / one / by + HAIR) * by;
        double start = (drag.start() - nought) / one;
        return new Slider(
                drag.variable(),
                Math.min(from, start),
                Math.max(to, start),
                by,
                start,
                unit,
                units.said(drag.label()),
                one,
                nought);
    }

    /** The metric value of one that is shown. */
    public double metric(double shown) {
        return isMetric() ? shown : shown * one + nought;
    }

    /** A metric value as it is shown. */
    public double shown(double metric) {
        return isMetric() ? metric : (metric - nought) / one;
    }

    /** Whether metric values are shown as they are. */
    public boolean isMetric() {
        return one == 1 && nought == 0;
    }

    /** Whether a metric value is one it can be dragged to, or between two such. */
    public boolean holds(double metric) {
        double value = shown(metric);
        return value >= from - HAIR && value <= to + HAIR;
    }

    /** The metric value of what somebody typed, in any fitting unit; empty where it is no such number. */
    public Optional<Double> typed(String typed) {
        try {
            return Optional.of(metric(Typed.number(typed, unit, variable)));
        } catch (RefusedException unread) {
            return Optional.empty();
        }
    }

    /**
     * The metric value of what somebody typed, in any fitting unit.
     *
     * @throws RefusedException where it is no number, its unit does not fit, or it is beyond the ends
     */
    public double read(String typed) {
        double metric = metric(Typed.number(Numeral.hyphened(typed), unit, label));
        if (!holds(metric)) {
            throw RefusedException.of(label, typed, range());
        }
        return metric;
    }

    /** How a value is shown: feet and inches as on a tape, else with the decimals of a stop. */
    public String words(double shown) {
        Units us = Units.US;
        return switch (unit) {
            case "ft" -> us.of(new Measure(metric(shown), MeasureKind.LENGTH_M).finer(1));
            case "in" -> us.of(new Measure(metric(shown), MeasureKind.SMALL_LENGTH_MM));
            default -> Numeral.withUnit(Numeral.minus(Numeral.typedTo(decimals(), shown)), unit);
        };
    }

    /** Those of a stop, and one more for what stands between two. */
    private int decimals() {
        double off = (start - from) / by;
        boolean between = Math.abs(off - Math.rint(off)) > HAIR;
        return isMetric() || !between ? DECIMALS : Math.max(0, (int) Math.ceil(-Math.log10(by) - HAIR)) + 1;
    }

    /** From where to where, with the unit. */
    public String range() {
        String low = words(from);
        String after = " " + unit;
        boolean said = low.endsWith(after) && words(to).endsWith(after) && !unit.equals("ft");
        return (said ? low.substring(0, low.length() - after.length()) : low) + " to " + words(to);
    }

    private static double roundStep(double step, String unit) {
        if (unit.equals("ft") || unit.equals("in")) {
            double inches = unit.equals("ft") ? INCHES_IN_FOOT : 1;
            return nearest(step * inches, INCHES) / inches;
        }
        double ten = Math.pow(10, Math.floor(Math.log10(step)));
        return nearest(step / ten, DIGITS) * ten;
    }

    /** By ratio. */
    private static double nearest(double step, double[] among) {
        double best = among[0];
        for (double one : among) {
            if (Math.abs(Math.log(one / step)) < Math.abs(Math.log(best / step))) {
                best = one;
            }
        }
        return best;
    }
}
