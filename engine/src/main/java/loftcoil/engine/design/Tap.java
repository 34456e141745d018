package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

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

    /** The same tap on a pipe of another tube. */
    public Tap withTube(String newTube) {
        return new Tap(name, levelM, newTube, lengthM, fittings, outletK, mixerC, appliance);
    }

    /** The same tap with this mixing valve, °C, or none. */
    public Tap withMixerC(OptionalDouble newMixerC) {
        return new Tap(name, levelM, tube, lengthM, fittings, outletK, newMixerC, appliance);
    }

    /** The same tap with this many fittings of one kind on its pipe. */
    public Tap withFittings(String key, int count) {
        Map<String, Integer> changed = new TreeMap<>(fittings);
        changed.put(key, count);
        return new Tap(name, levelM, tube, lengthM, changed, outletK, mixerC, appliance);
    }
}
