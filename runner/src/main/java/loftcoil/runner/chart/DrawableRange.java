package loftcoil.runner.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Which numbers can be drawn: a loop that runs away ends in some whose distance is no number any more. */
final class DrawableRange {

    private static final double LARGEST = 1e100;
    private static final double SMALLEST = 1e-100;

    private DrawableRange() {}

    /** Why a chart cannot be drawn, in a sentence; empty where it can. */
    static Optional<String> fault(ChartOrder order) {
        DoubleStream xs = DoubleStream.concat(
                order.curves().stream().flatMapToDouble(curve -> doubles(curve.xs())),
                order.marks().stream().mapToDouble(ChartOrder.Mark::at));
        DoubleStream ys = order.curves().stream().flatMapToDouble(curve -> doubles(curve.ys()));
        return fault("across", xs).or(() -> fault("up", ys));
    }

    private static DoubleStream doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue);
    }

    private static Optional<String> fault(String axis, DoubleStream values) {
        double most = values.filter(Double::isFinite).map(Math::abs).max().orElse(0);
        if (most > LARGEST) {
            return Optional.of("Not drawn: numbers too far apart to draw. The largest " + axis + " is " + most
                    + "; allowed: up to " + LARGEST + ". Does a loop run away?");
        }
        return most > 0 && most < SMALLEST
                ? Optional.of("Not drawn: numbers too close together to draw. The largest " + axis + " is " + most
                        + "; allowed: 0, or " + SMALLEST + " and more.")
                : Optional.empty();
    }
}
