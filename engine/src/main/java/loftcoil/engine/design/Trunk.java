package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * One pipe from the tank that several taps share. The pipes of its taps leave it at its end.
 *
 * @param tube name of its tube in the tube table
 * @param lengthM length from the tank to where the pipes part, m; 0.01 to 200
 * @param fittings number of fittings by key, without the tees at its end
 */
public record Trunk(String tube, double lengthM, Map<String, Integer> fittings) {

    /** Keeps a copy of the fittings in the order of their keys. */
    public Trunk {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }
}
