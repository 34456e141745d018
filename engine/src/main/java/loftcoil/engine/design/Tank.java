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

    /** The same tank with another lagging. */
    public Tank withLagging(LaggingChoice newLagging) {
        return withLaggingOrNone(Optional.of(newLagging));
    }

    /** The same tank at another level, m above the floor; the legs of a design must follow. */
    public Tank withBaseM(double newBaseM) {
        return new Tank(
                volumeL,
                heightM,
                newBaseM,
                waterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank with another volume when full, L. */
    public Tank withVolumeL(double newVolumeL) {
        return new Tank(
                newVolumeL,
                heightM,
                baseM,
                waterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank of another inside height, m; the waterline keeps its distance from the rim. */
    public Tank withHeightM(double newHeightM) {
        return new Tank(
                volumeL,
                newHeightM,
                baseM,
                waterlineM + newHeightM - heightM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank filled to another level, m above its base. */
    public Tank withWaterlineM(double newWaterlineM) {
        return new Tank(
                volumeL,
                heightM,
                baseM,
                newWaterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank with its ports at these levels, m above its base; the legs of a design must follow. */
    public Tank withPorts(double newColdM, double newReturnM, double newDrawM) {
        return new Tank(
                volumeL,
                heightM,
                baseM,
                waterlineM,
                newColdM,
                newReturnM,
                newDrawM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank with another lagging, or bare. */
    public Tank withLaggingOrNone(Optional<LaggingChoice> newLagging) {
        return new Tank(
                volumeL,
                heightM,
                baseM,
                waterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                newLagging,
                emptyMassKg,
                aroundC,
                refillAtH);
    }

    /** The same tank filled up by hand at this hour, h; empty where cold water follows every draw. */
    public Tank withRefillAtH(OptionalDouble newRefillAtH) {
        return new Tank(
                volumeL,
                heightM,
                baseM,
                waterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                newRefillAtH);
    }
}
