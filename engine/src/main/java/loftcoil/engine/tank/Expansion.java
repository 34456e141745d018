package loftcoil.engine.tank;

import loftcoil.engine.water.Water;

/**
 * How much room water needs as it warms: a mass keeps its mass, so its volume grows as its density falls (IAPWS SR6-08).
 * The wall grows too, by about a tenth of it for steel; leaving that out errs to the safe side.
 */
public final class Expansion {

    private Expansion() {}

    /**
     * Growth of a volume of water.
     *
     * @param volumeM3 volume of the water at the first temperature in m³, 0.005 to 20
     * @param fromC first temperature in °C, 0 to 110
     * @param toC second temperature in °C, 0 to 110
     * @return m³; negative where it shrinks
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public static double growthM3(double volumeM3, double fromC, double toC) {
        return TankShape.VOLUME.require("volumeM3", volumeM3)
                * (Water.densityKgPerM3(fromC) / Water.densityKgPerM3(toC) - 1);
    }
}
