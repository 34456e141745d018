package loftcoil.engine.loop;

import loftcoil.engine.tank.WaterHeat;

/**
 * What a march wants to know of water that holds so much heat: temperature, density and viscosity, each read from straight pieces of
 * about 0.1 K. They miss {@link LiquidTable} by less than 3e-5 kg/m³ and 3e-6 of the viscosity (held by a test): a march asks for each
 * cell at each step, and cubics would be half its time.
 */
final class WaterByHeat {

    private static final int PIECES = 1024;
    private static final double TOP_J_PER_KG = WaterHeat.jPerKg(Limits.FORMULA_C);
    private static final double PIECES_PER_J = PIECES / TOP_J_PER_KG;
    private static final double[] TEMP_C = new double[PIECES + 1];
    private static final double[] DENSITY = new double[PIECES + 1];
    private static final double[] KINEMATIC = new double[PIECES + 1];

    static {
        for (int i = 0; i <= PIECES; i++) {
            TEMP_C[i] = WaterHeat.tempC(i * TOP_J_PER_KG / PIECES);
            DENSITY[i] = LiquidTable.WATER.densityKgPerM3(TEMP_C[i]);
            KINEMATIC[i] = LiquidTable.WATER.kinematicM2PerS(TEMP_C[i]);
        }
    }

    private WaterByHeat() {}

    /** Place of water that holds so much heat above 0 °C: the number of its piece, and how far along it is. */
    static double place(double jPerKg) {
        return Math.max(0, Math.min(PIECES, jPerKg * PIECES_PER_J));
    }

    /** Piece that a place lies in. */
    static int piece(double place) {
        return Math.min((int) place, PIECES - 1);
    }

    /** Temperature so far along a piece, °C. */
    static double tempC(int piece, double along) {
        return at(TEMP_C, piece, along);
    }

    /** Density so far along a piece, kg/m³. */
    static double densityKgPerM3(int piece, double along) {
        return at(DENSITY, piece, along);
    }

    /** Kinematic viscosity so far along a piece, m²/s. */
    static double kinematicM2PerS(int piece, double along) {
        return at(KINEMATIC, piece, along);
    }

    private static double at(double[] of, int piece, double along) {
        return of[piece] + along * (of[piece + 1] - of[piece]);
    }
}
