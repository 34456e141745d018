package loftcoil.engine.sun;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleBinaryOperator;
import loftcoil.engine.fault.Allowed;

/**
 * A loss tabulated over the tank's face and the outside air, for a march that asks every minute. Between the points both
 * ways straight lines; the error against the settled panes is measured in the tests.
 */
final class WindowLossTable {

    private static final double SPACING_K = 2;

    private static final int ROWS = points(WindowLoss.SURFACE);
    private static final int COLUMNS = points(WindowLoss.AIR);

    private final DoubleBinaryOperator lossOfSurfaceAndAir;

    /** For each air its losses by the surface; worked out when first asked for, by two threads perhaps, to the same numbers. */
    private final AtomicReferenceArray<double[]> byAir = new AtomicReferenceArray<>(COLUMNS);

    /**
     * A table that is worked out at once for the air that is looked for most, so that a look there allocates nothing.
     *
     * @param lossOfSurfaceAndAir W/m²
     * @param leastAirC coldest such air, °C, in the range of {@link WindowLoss#AIR}
     * @param mostAirC warmest such air, °C, likewise
     */
    WindowLossTable(DoubleBinaryOperator lossOfSurfaceAndAir, double leastAirC, double mostAirC) {
        this.lossOfSurfaceAndAir = lossOfSurfaceAndAir;
        int from = Math.max(0, (int) ((leastAirC - WindowLoss.AIR.low()) / SPACING_K));
        int to = (int) ((mostAirC - WindowLoss.AIR.low()) / SPACING_K) + 1;
        for (int column = from; column <= Math.min(to, COLUMNS - 1); column++) {
            column(column);
        }
    }

    private double[] column(int column) {
        double[] known = byAir.get(column);
        if (known != null) {
            return known;
        }
        double airC = WindowLoss.AIR.low() + column * SPACING_K;
        double[] loss = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            loss[row] = lossOfSurfaceAndAir.applyAsDouble(WindowLoss.SURFACE.low() + row * SPACING_K, airC);
        }
        byAir.set(column, loss);
        return loss;
    }

    double at(double surfaceC, double airC) {
        double down = (WindowLoss.SURFACE.require("surfaceC", surfaceC) - WindowLoss.SURFACE.low()) / SPACING_K;
        double across = (WindowLoss.AIR.require("airC", airC) - WindowLoss.AIR.low()) / SPACING_K;
        int row = Math.min((int) down, ROWS - 2);
        int column = Math.min((int) across, COLUMNS - 2);
        double byRow = down - row;
        double byColumn = across - column;
        double[] colder = column(column);
        double[] warmer = column(column + 1);
        double near = colder[row] + byColumn * (warmer[row] - colder[row]);
        double far = colder[row + 1] + byColumn * (warmer[row + 1] - colder[row + 1]);
        return near + byRow * (far - near);
    }

    private static int points(Allowed range) {
        return (int) Math.round((range.high() - range.low()) / SPACING_K) + 1;
    }
}
