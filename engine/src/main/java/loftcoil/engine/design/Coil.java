package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * The coil in the fire.
 *
 * @param tube name of its tube in the tube table
 * @param lengthM length of tube, m; 0.1 to 50; no less than the difference of its levels
 * @param inletM level of its inlet above the floor, m; −10 to 15
 * @param outletM level of its outlet above the floor, m; −10 to 15
 * @param fittings number of fittings by key
 * @param heatKW heat the water takes up, kW; 0 to 50; empty where it is to be worked out from the fire
 */
public record Coil(
        String tube,
        double lengthM,
        double inletM,
        double outletM,
        Map<String, Integer> fittings,
        OptionalDouble heatKW) {

    /** Keeps a copy of the fittings in the order of their keys. */
    public Coil {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /** Level of the outlet above that of the inlet, m. */
    public double riseM() {
        return outletM - inletM;
    }

    /** The same coil of another tube. */
    public Coil withTube(String newTube) {
        return new Coil(newTube, lengthM, inletM, outletM, fittings, heatKW);
    }

    /** The same coil with another length of tube, m. */
    public Coil withLengthM(double newLengthM) {
        return new Coil(tube, newLengthM, inletM, outletM, fittings, heatKW);
    }

    /** The same coil moved so that its inlet is at this level, m; the legs of a design must follow. */
    public Coil withInletM(double newInletM) {
        return new Coil(tube, lengthM, newInletM, newInletM + riseM(), fittings, heatKW);
    }

    /** The same coil with another heat, kW. */
    public Coil withHeatKW(double newHeatKW) {
        return new Coil(tube, lengthM, inletM, outletM, fittings, OptionalDouble.of(newHeatKW));
    }

    /** The same coil with its heat stated, kW, or to be worked out. */
    public Coil withHeat(OptionalDouble newHeatKW) {
        return new Coil(tube, lengthM, inletM, outletM, fittings, newHeatKW);
    }

    /** The same coil with its ends changed over; the legs of a design must follow. */
    public Coil turned() {
        return new Coil(tube, lengthM, /* inletM= */ outletM, /* outletM= */ inletM, fittings, heatKW);
    }

    /** The same coil without fittings of these kinds. */
    public Coil withoutFittings(Set<String> keys) {
        return new Coil(tube, lengthM, inletM, outletM, FittingCounts.without(fittings, keys), heatKW);
    }
}
