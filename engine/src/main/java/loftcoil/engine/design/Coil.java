package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The coil in the fire.
 *
 * @param tube name of its tube in the tube table
 * @param lengthM length of tube, m; 0.1 to 50; no less than the difference of its levels
 * @param inletM level of its inlet above the floor, m; −10 to 15
 * @param outletM level of its outlet above the floor, m; −10 to 15
 * @param fittings number of fittings by key
 * @param windingMm diameter of the winding, middle of tube to middle, mm; 50 to 2000 and three times the tube; empty where it is not
 *     wound
 * @param sootMm layer of soot and ash on it, mm; 0 to 10; empty where the common 0.5 is taken
 * @param heatKW heat the water takes up, kW; 0 to 50; empty where it is to be worked out from the fire
 */
public record Coil(
        String tube,
        double lengthM,
        double inletM,
        double outletM,
        Map<String, Integer> fittings,
        OptionalDouble windingMm,
        OptionalDouble sootMm,
        OptionalDouble heatKW) {

    /** Keeps a copy of the fittings in the order of their keys. */
    public Coil {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /** Level of the outlet above that of the inlet, m. */
    public double riseM() {
        return outletM - inletM;
    }

    /** Diameter of the winding, m; 0 where it is not wound. */
    double windingM() {
        return windingMm.orElse(0) / 1000;
    }

    /** The same coil with its ends changed over; the legs of a design must follow. */
    Coil turned() {
        return new Coil(
                tube, lengthM, /* inletM= */ outletM, /* outletM= */ inletM, fittings, windingMm, sootMm, heatKW);
    }
}
