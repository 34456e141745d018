package loftcoil.engine.loop;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.Tube;

/**
 * One run of tube in the loop, of one bore and one lagging, listed in the forward direction (tank's cold port, cold
 * legs, coil, hot legs, tank's return port).
 *
 * @param name what the builder calls it; used in every message about it
 * @param tube the tube it is made of
 * @param lengthM length along the tube, m; more than 0
 * @param riseM level of its far end minus level of its near end, m; no more than the length either way
 * @param fittings number of fittings by key of the fitting table
 * @param lagging its lagging; {@link Lagging#NONE} for a bare tube
 * @param aroundC temperature of the air and walls around it, °C
 * @param windingM diameter of the winding, middle of tube to middle, m; 0 where it is not wound
 */
public record Pipe(
        String name,
        Tube tube,
        double lengthM,
        double riseM,
        Map<String, Integer> fittings,
        Lagging lagging,
        double aroundC,
        double windingM) {

    /** A run that is not wound. */
    public Pipe(
            String name,
            Tube tube,
            double lengthM,
            double riseM,
            Map<String, Integer> fittings,
            Lagging lagging,
            double aroundC) {
        this(name, tube, lengthM, riseM, fittings, lagging, aroundC, 0);
    }

    /** Keeps a copy of the fittings in the order of their keys. */
    public Pipe {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }
}
