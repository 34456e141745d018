package loftcoil.engine.loop;

import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.water.Water;

/**
 * Properties of a liquid from 0 to 110 °C read from cubics one kelvin wide that pass through the values of its formulas: water's,
 * of {@link Water}, in every design; another liquid's where the model is tested against a loop measured with one. A search needs
 * some ten thousand of them and the formulas' powers would be nearly all its time. The cubics are within 1e-7 of the formulas (held by a test). Outside the range the last value is held, so that a trial
 * flow that would boil can be seen to boil; no such value is ever reported.
 */
final class LiquidTable {

    private static final int STEPS = 110;
    private static final int MOST_STEPS = 3;
    private static final double SMALL_STEP_K = 1e-3;

    /** Water. */
    static final LiquidTable WATER =
            new LiquidTable(Water::densityKgPerM3, Water::viscosityPaS, Water::specificHeatJPerKgK);

    private final double[] densities;
    private final double[] kinematics;
    private final double[] heats;
    private final double[] enthalpies;

    /** Of formulas in °C, each smooth from 0 to 110: kg/m³, Pa s and J/(kg K). */
    LiquidTable(DoubleUnaryOperator density, DoubleUnaryOperator viscosity, DoubleUnaryOperator specificHeat) {
        densities = cubics(density);
        kinematics = cubics(t -> viscosity.applyAsDouble(t) / density.applyAsDouble(t));
        heats = cubics(specificHeat);
        enthalpies = sums(heats);
    }

    double densityKgPerM3(double tempC) {
        return cubic(densities, tempC);
    }

    /** Kinematic viscosity, m²/s. */
    double kinematicM2PerS(double tempC) {
        return cubic(kinematics, tempC);
    }

    double specificHeatJPerKgK(double tempC) {
        return cubic(heats, tempC);
    }

    /** Enthalpy above the liquid at 0 °C, J/kg: the integral of the specific heat. Straight beyond the range. */
    double enthalpyJPerKg(double tempC) {
        if (!(tempC > 0)) {
            return heats[0] * tempC;
        }
        if (tempC > STEPS) {
            return enthalpies[STEPS] + specificHeatJPerKgK(STEPS) * (tempC - STEPS);
        }
        int step = Math.min((int) tempC, STEPS - 1);
        double x = tempC - step;
        int at = 4 * step;
        return enthalpies[step]
                + x * (heats[at] + x * (heats[at + 1] / 2 + x * (heats[at + 2] / 3 + x * heats[at + 3] / 4)));
    }

    /** Temperature of the liquid at {@code fromC} after taking up this heat, °C. */
    double warmedC(double fromC, double heatJPerKg) {
        double goal = enthalpyJPerKg(fromC) + heatJPerKg;
        double tempC = fromC + heatJPerKg / specificHeatJPerKgK(fromC);
        // Newton on a curve that is straight to 1 %: a step of a thousandth of a kelvin leaves nothing but rounding.
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = (enthalpyJPerKg(tempC) - goal) / specificHeatJPerKgK(tempC);
            tempC -= step;
            if (Math.abs(step) < SMALL_STEP_K) {
                break;
            }
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

    double density(int cell, double within) {
        return cubic(densities, cell, within);
    }

    double kinematic(int cell, double within) {
        return cubic(kinematics, cell, within);
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
