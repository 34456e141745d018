package loftcoil.engine.tank;

import java.util.OptionalInt;
import loftcoil.engine.fault.Allowed;

/**
 * A timber on edge that carries its load in its middle, simply supported: how deep it has to be. To the safe side: softwood of the
 * weakest common class, a load that never goes away, a loft that is sometimes damp.
 *
 * <p>EN 1995-1-1:2004 (from memory; the partial factors and C16 as restated in public): bending 6.1.6, shear 6.1.7 with the crack factor
 * 0.67, final deflection 7.2 at a 250th of the span, creep factor 0.8 (table 3.2, service class 2), modification factor 0.6 (table 3.1,
 * permanent load, service class 2), material factor 1.3 (table 2.3); load factor 1.35 (EN 1990, A1.2(B)). C16 by EN 338:2016, table 1:
 * bending 16, shear 3.2, modulus 8000 N/mm².
 */
public final class TimberBearer {

    /** Width of the timber, mm: a common one. */
    public static final double WIDE_MM = 45;

    /** Depths as sold, mm; common practice, no source. */
    private static final int[] DEEP_MM = {95, 120, 145, 170, 195, 220};

    private static final double BENDING_N_PER_MM2 = 16;
    private static final double SHEAR_N_PER_MM2 = 3.2;
    private static final double MODULUS_N_PER_MM2 = 8000;
    private static final double FOR_GOOD = 0.6;
    private static final double MATERIAL = 1.3;
    private static final double LOAD = 1.35;
    private static final double CRACKED = 0.67;
    private static final double CREEP = 0.8;
    private static final double SAG = 1.0 / 250;

    private TimberBearer() {}

    /**
     * Least depth of those that are sold.
     *
     * @param loadN load in its middle, N; 0 to 100 000
     * @param spanM clear span, m; 0.1 to 5
     * @return depth in mm; empty where none of them does
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public static OptionalInt deepMm(double loadN, double spanM) {
        double load = new Allowed(0, 100_000, "N").require("loadN", loadN);
        double spanMm = 1000 * new Allowed(0.1, 5, "m").require("spanM", spanM);
        for (int deep : DEEP_MM) {
            if (carries(deep, load, spanMm)) {
                return OptionalInt.of(deep);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean carries(double deepMm, double loadN, double spanMm) {
        double moment = LOAD * loadN * spanMm / 4;
        boolean bends = moment / (WIDE_MM * deepMm * deepMm / 6) <= FOR_GOOD * BENDING_N_PER_MM2 / MATERIAL;
        // All of it beside one support, where it shears most.
        boolean shears =
                1.5 * LOAD * loadN / (CRACKED * WIDE_MM * deepMm) <= FOR_GOOD * SHEAR_N_PER_MM2 / MATERIAL;
        double second = WIDE_MM * Math.pow(deepMm, 3) / 12;
        double sagMm = (1 + CREEP) * loadN * Math.pow(spanMm, 3) / (48 * MODULUS_N_PER_MM2 * second);
        return bends && shears && sagMm <= SAG * spanMm;
    }
}
