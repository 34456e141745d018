package loftcoil.engine.tank;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Water;

/**
 * Heat held by a kilogram of water above 0 °C, and back: the specific enthalpy h(T) = ∫ cp dT at 0.1 MPa from 0 °C, with cp
 * of IAPWS SR6-08(2011).
 *
 * <p>A tank keeps its account in this quantity, because mixing adds heat and not temperature. The integral is laid down once
 * as straight pieces, {@value #PIECES} of equal heat (about 0.1 K each); the pieces miss the curve by less than 2e-6 K, and the
 * two methods undo each other to rounding, which is what lets an account close.
 */
public final class WaterHeat {

    private static final int PIECES = 1024;
    private static final double TOP_C = Water.TEMPERATURE.high();
    private static final double TOP_J_PER_KG = integral(0, TOP_C);
    private static final double PIECE_J_PER_KG = TOP_J_PER_KG / PIECES;
    private static final double PIECES_PER_J = 1 / PIECE_J_PER_KG;
    private static final double[] KNOT_C = knots();

    private WaterHeat() {}

    /**
     * Heat held above 0 °C.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return J/kg
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double jPerKg(double tempC) {
        return lineJPerKg(Water.TEMPERATURE.require("tempC", tempC));
    }

    /**
     * Temperature of water that holds so much heat. Outside the range of {@link #jPerKg} the end pieces are carried on, so
     * that rounding at the ends does no harm; a caller that can leave the range checks for it.
     *
     * @param jPerKg heat above 0 °C in J/kg
     * @return °C
     */
    public static double tempC(double jPerKg) {
        double at = jPerKg * PIECES_PER_J;
        int piece = Math.max(0, Math.min(PIECES - 1, (int) at));
        return KNOT_C[piece] + (at - piece) * (KNOT_C[piece + 1] - KNOT_C[piece]);
    }

    private static double lineJPerKg(double tempC) {
        int piece = Math.min(PIECES - 1, (int) (tempC / TOP_C * PIECES));
        while (piece > 0 && tempC < KNOT_C[piece]) {
            piece--;
        }
        while (piece < PIECES - 1 && tempC > KNOT_C[piece + 1]) {
            piece++;
        }
        double part = (tempC - KNOT_C[piece]) / (KNOT_C[piece + 1] - KNOT_C[piece]);
        return (piece + part) * PIECE_J_PER_KG;
    }

    /** Temperatures at equal steps of heat: each found from the one below by Newton's steps. */
    private static double[] knots() {
        double[] knots = new double[PIECES + 1];
        for (int i = 1; i < PIECES; i++) {
            double low = knots[i - 1];
            double high = low + PIECE_J_PER_KG / Water.specificHeatJPerKgK(low);
            for (int step = 0; step < 4; step++) {
                double over = gauss(low, high) - PIECE_J_PER_KG;
                high = Math.min(TOP_C, high - over / Water.specificHeatJPerKgK(high));
            }
            knots[i] = high;
        }
        knots[PIECES] = TOP_C;
        return knots;
    }

    private static double integral(double fromC, double toC) {
        int parts = PIECES;
        double width = (toC - fromC) / parts;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            sum += gauss(fromC + i * width, Math.min(toC, fromC + (i + 1) * width));
        }
        return sum;
    }

    /** Three-point Gauss-Legendre quadrature of cp; on a tenth of a kelvin it is exact to rounding. */
    private static double gauss(double fromC, double toC) {
        double middle = (fromC + toC) / 2;
        double half = (toC - fromC) / 2;
        double reach = half * Math.sqrt(0.6);
        return half
                / 9
                * (5 * Water.specificHeatJPerKgK(middle - reach)
                        + 8 * Water.specificHeatJPerKgK(middle)
                        + 5 * Water.specificHeatJPerKgK(middle + reach));
    }
}
