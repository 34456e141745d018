package loftcoil.engine.sun;

import java.util.function.DoubleBinaryOperator;

/**
 * A loss tabulated over the tank's face and the outside air, for a march that asks every minute. Between the points both
 * ways straight lines; the error against the settled panes is measured in the tests.
 */
final class LossTable {

    private static final double SPACING_K = 2;

    private final int columns;
    private final double[] loss;

    LossTable(DoubleBinaryOperator lossOfSurfaceAndAir) {
        int rows = points(WindowLoss.SURFACE.high() - WindowLoss.SURFACE.low());
        columns = points(WindowLoss.AIR.high() - WindowLoss.AIR.low());
        loss = new double[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double surfaceC = WindowLoss.SURFACE.low() + row * SPACING_K;
                double airC = WindowLoss.AIR.low() + column * SPACING_K;
                loss[row * columns + column] = lossOfSurfaceAndAir.applyAsDouble(surfaceC, airC);
            }
        }
    }

    double at(double surfaceC, double airC) {
        double down = (WindowLoss.SURFACE.require("surfaceC", surfaceC) - WindowLoss.SURFACE.low()) / SPACING_K;
        double across = (WindowLoss.AIR.require("airC", airC) - WindowLoss.AIR.low()) / SPACING_K;
        int row = Math.min((int) down, loss.length / columns - 2);
        int column = Math.min((int) across, columns - 2);
        double byRow = down - row;
        double byColumn = across - column;
        int here = row * columns + column;
        double near = loss[here] + byColumn * (loss[here + 1] - loss[here]);
        double far = loss[here + columns] + byColumn * (loss[here + columns + 1] - loss[here + columns]);
        return near + byRow * (far - near);
    }

    private static int points(double span) {
        return (int) Math.round(span / SPACING_K) + 1;
    }
}
