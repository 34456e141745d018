package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The tank. Ports and waterline are metres above its base, the base metres above the floor.
 *
 * @param volumeL volume when full, L; 10 to 5000
 * @param heightM inside height, m; 0.1 to 5
 * @param baseM level of the base above the floor, m; −10 to 15
 * @param waterlineM free surface, m above the base; not above the tank's height
 * @param coldPortM port to the cold legs, m above the base; below the return port
 * @param returnPortM port of the hot legs, m above the base; below the waterline
 * @param drawPortM port to the taps, m above the base; below the waterline
 * @param lagging lagging; empty for a bare tank
 * @param emptyMassKg mass without water, kg; 0 to 3000
 * @param aroundC temperature around the tank, °C; −30 to 60
 * @param refillAtH hour at which it is filled up by hand each day, h; 0 to 24; empty where cold water follows every draw
 */
public record Tank(
        double volumeL,
        double heightM,
        double baseM,
        double waterlineM,
        double coldPortM,
        double returnPortM,
        double drawPortM,
        Optional<LaggingChoice> lagging,
        double emptyMassKg,
        double aroundC,
        OptionalDouble refillAtH) {

    /** Level of the cold port above the floor, m. */
    public double coldPortLevelM() {
        return baseM + coldPortM;
    }

    /** Level of the return port above the floor, m. */
    public double returnPortLevelM() {
        return baseM + returnPortM;
    }

    /** Level of the waterline above the floor, m. */
    public double waterlineLevelM() {
        return baseM + waterlineM;
    }
}
