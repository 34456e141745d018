package loftcoil.engine.loop;

import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.water.Water;

/**
 * Properties of water from 0 to 110 °C read from cubics one kelvin wide that pass through the values of
 * {@link Water}. A search needs some ten thousand of them and the formulas' powers would be nearly all its time. The
 * cubics are within 1e-7 of the formulas (held by a test). Outside the range the last value is held, so that a trial
 * flow that would boil can be seen to boil; no such value is ever reported.
 */
final class LiquidTable {

    private static final int STEPS = 110;
    private static final double[] DENSITY = cubics(Water::densityKgPerM3);
    private static final double[] KINEMATIC = cubics(t -> Water.viscosityPaS(t) / Water.densityKgPerM3(t));
    private static final double[] HEAT = cubics(Water::specificHeatJPerKgK);
    private static final double[] ENTHALPY = sums(HEAT);

    private LiquidTable() {}

    static double densityKgPerM3(double tempC) {
        return cubic(DENSITY, tempC);
    }

    /** Kinematic viscosity, m²/s. */
    static double kinematicM2PerS(double tempC) {
        return cubic(KINEMATIC, tempC);
    }

    static double specificHeatJPerKgK(double tempC) {
        return cubic(HEAT, tempC);
    }

    /** Enthalpy above water at 0 °C, J/kg: the integral of the specific heat. Straight beyond the range. */
    static double enthalpyJPerKg(double tempC) {
        if (!(tempC > 0)) {
            return HEAT[0] * tempC;
        }
        if (tempC > STEPS) {
            return ENTHALPY[STEPS] + specificHeatJPerKgK(STEPS) * (tempC - STEPS);
        }
        int step = Math.min((int) tempC, STEPS - 1);
        double x = tempC - step;
        int at = 4 * step;
        return ENTHALPY[step] + x * (HEAT[at] + x * (HEAT[at + 1] / 2 + x * (HEAT[at + 2] / 3 + x * HEAT[at + 3] / 4)));
    }

    /** Temperature of water at {@code fromC} after taking up this heat, °C. */
    static double warmedC(double fromC, double heatJPerKg) {
        double goal = enthalpyJPerKg(fromC) + heatJPerKg;
        double tempC = fromC + heatJPerKg / specificHeatJPerKgK(fromC);
        // Newton on a curve that is straight to 1 %: three steps leave nothing but rounding.
        for (int i = 0; i < 3; i++) {
            tempC -= (enthalpyJPerKg(tempC) - goal) / specificHeatJPerKgK(tempC);
        }
        return tempC;
    }

    /** Number of the cubic that holds at a temperature; for reading several properties at once. */
    static int cell(double tempC) {
        return (int) Math.min(Math.max(tempC, 0), STEPS - 1);
    }

    /** Place inside that cubic, 0 to 1. */
    static double within(double tempC, int cell) {
        return Math.min(Math.max(tempC, 0), STEPS) - cell;
    }

    static double density(int cell, double within) {
        return cubic(DENSITY, cell, within);
    }

    static double kinematic(int cell, double within) {
        return cubic(KINEMATIC, cell, within);
    }

    private static double cubic(double[] cubics, double tempC) {
        int cell = cell(tempC);
        return cubic(cubics, cell, within(tempC, cell));
    }

    private static double cubic(double[] cubics, int cell, double x) {
        int at = 4 * cell;
        return cubics[at] + x * (cubics[at + 1] + x * (cubics[at + 2] + x * cubics[at + 3]));
    }

    private static double[] cubics(DoubleUnaryOperator formula) {
        double[] value = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            value[i] = formula.applyAsDouble(i);
        }
        double[] cubics = new double[4 * STEPS];
        for (int i = 0; i < STEPS; i++) {
            double slope = slope(value, i);
            double next = slope(value, i + 1);
            double rise = value[i + 1] - value[i];
            cubics[4 * i] = value[i];
            cubics[4 * i + 1] = slope;
            cubics[4 * i + 2] = 3 * rise - 2 * slope - next;
            cubics[4 * i + 3] = slope + next - 2 * rise;
        }
        return cubics;
    }

    /** Slope at a node per kelvin from five nodes; fourth order, at the ends too. */
    private static double slope(double[] v, int i) {
        if (i == 0) {
            return (-25 * v[0] + 48 * v[1] - 36 * v[2] + 16 * v[3] - 3 * v[4]) / 12;
        }
        if (i == 1) {
            return (-3 * v[0] - 10 * v[1] + 18 * v[2] - 6 * v[3] + v[4]) / 12;
        }
        if (i == STEPS - 1) {
            return (3 * v[i + 1] + 10 * v[i] - 18 * v[i - 1] + 6 * v[i - 2] - v[i - 3]) / 12;
        }
        if (i == STEPS) {
            return (25 * v[i] - 48 * v[i - 1] + 36 * v[i - 2] - 16 * v[i - 3] + 3 * v[i - 4]) / 12;
        }
        return (v[i - 2] - 8 * v[i - 1] + 8 * v[i + 1] - v[i + 2]) / 12;
    }

    private static double[] sums(double[] heat) {
        double[] sums = new double[STEPS + 1];
        for (int i = 0; i < STEPS; i++) {
            int at = 4 * i;
            sums[i + 1] = sums[i] + heat[at] + heat[at + 1] / 2 + heat[at + 2] / 3 + heat[at + 3] / 4;
        }
        return sums;
    }
}
