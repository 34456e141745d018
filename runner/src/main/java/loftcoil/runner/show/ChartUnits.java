package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;
import loftcoil.runner.chart.ChartOrder;

/** A chart in the units of the reader: Java plots metric numbers, and they are turned when it is drawn. */
public final class ChartUnits {

    private static final String APART = " apart";

    private final Units units;

    private ChartUnits(Units units) {
        this.units = units;
    }

    /** The same chart in those units. */
    public static ChartOrder in(Units units, ChartOrder order) {
        return units == Units.METRIC ? order : new ChartUnits(units).turned(order);
    }

    private ChartOrder turned(ChartOrder order) {
        Optional<MeasureKind> across = kind(order.across());
        Optional<MeasureKind> up = kind(order.up());
        return new ChartOrder(
                units.said(order.title()),
                turned(order.across(), across),
                turned(order.up(), up),
                order.curves().stream()
                        .map(curve -> new ChartOrder.Curve(
                                units.said(curve.name()),
                                turned(curve.xs(), across),
                                turned(curve.ys(), up),
                                curve.dots(),
                                curve.end()))
                        .toList(),
                order.marks().stream()
                        .map(mark -> new ChartOrder.Mark(turned(mark.at(), across), units.said(mark.words())))
                        .toList(),
                order.empty(),
                order.crossing());
    }

    private static Optional<MeasureKind> kind(ChartOrder.Axis axis) {
        return MeasureKind.ofUnit(axis.unit());
    }

    private ChartOrder.Axis turned(ChartOrder.Axis axis, Optional<MeasureKind> kind) {
        return new ChartOrder.Axis(
                units.said(axis.label()), kind.map(units::typedUnit).orElse(axis.unit()) + apart(axis));
    }

    /** What tells a difference of temperatures from a temperature, in any units. */
    private static String apart(ChartOrder.Axis axis) {
        return axis.unit().endsWith(APART) ? APART : "";
    }

    private List<Double> turned(List<Double> values, Optional<MeasureKind> kind) {
        return kind.isEmpty()
                ? values
                : values.stream().map(value -> turned(value, kind)).toList();
    }

    private double turned(double value, Optional<MeasureKind> kind) {
        return kind.map(known -> units.shown(known, value)).orElse(value);
    }
}
