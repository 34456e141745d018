package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * One leg of the loop, from the tank towards the coil on the cold side, from the coil towards the tank on the hot side.
 *
 * @param name what the builder calls it; no two legs alike
 * @param tube name of its tube in the tube table
 * @param lengthM length along the tube, m; 0.01 to 100
 * @param riseM level of its far end minus level of its near end, m; no more than the length either way
 * @param fittings number of fittings by key
 * @param lagging lagging; empty for a bare tube
 * @param aroundC temperature around it while the fire burns, °C; −30 to 250
 * @param aroundFireOutC temperature around it with the fire out, °C; −30 to 250; where it is not given, that is
 *     {@code aroundC}, but not above the room's: a leg warmed by the flue is at room temperature when the fire is out
 * @param outdoors whether it runs outdoors, where the air of the place is round it and the two temperatures above are passed over; see
 *     {@link Outdoors}
 */
public record Leg(
        String name,
        String tube,
        double lengthM,
        double riseM,
        Map<String, Integer> fittings,
        Optional<LaggingChoice> lagging,
        double aroundC,
        OptionalDouble aroundFireOutC,
        Optional<Boolean> outdoors) {

    private static final double LEAST_LENGTH_M = 0.05;

    /** Keeps a copy of the fittings in the order of their keys. */
    public Leg {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /** A leg in the house. */
    public Leg(
            String name,
            String tube,
            double lengthM,
            double riseM,
            Map<String, Integer> fittings,
            Optional<LaggingChoice> lagging,
            double aroundC,
            OptionalDouble aroundFireOutC) {
        this(name, tube, lengthM, riseM, fittings, lagging, aroundC, aroundFireOutC, Optional.empty());
    }

    /** Whether it runs outdoors. */
    public boolean isOutdoors() {
        return outdoors.orElse(false);
    }

    /** The same leg with this temperature round it, °C, whether the fire burns or not. */
    Leg amid(double newAroundC) {
        return new Leg(
                name,
                tube,
                lengthM,
                riseM,
                fittings,
                lagging,
                newAroundC,
                OptionalDouble.of(newAroundC),
                Optional.empty());
    }

    /** Length seen from above, m; 0 where it stands upright. */
    public double levelRunM() {
        return Math.sqrt(Math.max(0, lengthM * lengthM - riseM * riseM));
    }

    /** The same leg by another name. */
    public Leg named(String newName) {
        return LegFields.TABLE.with(this, LegFields.NAME, newName);
    }

    /** The same leg with another lagging. */
    public Leg withLagging(Optional<LaggingChoice> newLagging) {
        return LegFields.TABLE.with(this, LegFields.LAGGING, newLagging);
    }

    /** The same leg with another rise, m, as long as its level run then needs. */
    public Leg withRiseM(double newRiseM) {
        return shaped(levelRunM(), newRiseM);
    }

    /** The same leg with another level run, m, as long as its rise then needs. */
    public Leg withLevelRunM(double newRunM) {
        return shaped(newRunM, riseM);
    }

    private Leg shaped(double runM, double newRiseM) {
        double newLengthM = Math.max(LEAST_LENGTH_M, Math.hypot(runM, newRiseM));
        return new Leg(name, tube, newLengthM, newRiseM, fittings, lagging, aroundC, aroundFireOutC, outdoors);
    }
}
