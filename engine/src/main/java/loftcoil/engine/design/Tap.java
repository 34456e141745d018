package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/**
 * A tap and the pipe to it.
 *
 * @param name what the builder calls it; no two taps alike
 * @param levelM level of its outlet above the floor, m; −10 to 15
 * @param tube name of its tube in the tube table
 * @param lengthM length of pipe from the tank, m; 0.01 to 200
 * @param fittings number of fittings by key
 * @param outletK loss coefficient of the open tap on the speed in the pipe; 0 to 1000
 * @param mixerC hottest water the thermostatic mixing valve before it lets through, °C; 20 to 70; empty where there is none
 * @param appliance appliance that hangs on it, by its name in the table of inlets; empty where there is none
 */
public record Tap(
        String name,
        double levelM,
        String tube,
        double lengthM,
        Map<String, Integer> fittings,
        double outletK,
        OptionalDouble mixerC,
        Optional<String> appliance) {

    /** Keeps a copy of the fittings in the order of their keys. */
    public Tap {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /**
     * The same tap on a pipe of another tube. The tap keeps its own narrow ways, so what it takes at a given flow stays as it
     * was: as its loss counts on the speed in the pipe, outletK + 1 (the one is the jet) goes with the fourth power of the bore.
     */
    Tap onTube(String newTube) {
        double widened = boreM(newTube) / boreM(tube);
        double k = Double.isFinite(widened) ? (outletK + 1) * Math.pow(widened, 4) - 1 : outletK;
        double kept = Math.min(Math.max(k, 0), TapFields.MOST_OUTLET_K);
        return TapFields.TABLE.with(TapFields.TABLE.with(this, TapFields.TUBE, newTube), TapFields.OUTLET_K, kept);
    }

    private static double boreM(String tube) {
        return TubeTable.find(tube).map(Tube::boreM).orElse(Double.NaN);
    }
}
