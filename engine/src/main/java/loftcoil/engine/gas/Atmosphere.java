package loftcoil.engine.gas;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * The pressure of the air at an altitude in the standard atmosphere of ISO 2533:1975 (the same as ICAO Doc 7488), lowest
 * layer: sea level 101 325 Pa and 15 °C, falling 6.5 K a kilometre.
 *
 * <p>Weather moves the real pressure by about 3 % either way, that is the boiling point by about 1 K. Altitude is taken as
 * geopotential height; at 5000 m the difference to height above the sea is 4 m.
 */
public final class Atmosphere {

    /** The altitudes accepted, in m above sea level. */
    public static final Allowed ALTITUDE = new Allowed(-500, 5000, "m");

    private static final double SEA_LEVEL_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double EXPONENT = Constants.GRAVITY_M_PER_S2 / (Air.GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M);

    private Atmosphere() {}

    /**
     * Absolute pressure of the air.
     *
     * @param altitudeM height above sea level in m, -500 to 5000
     * @return Pa
     * @throws RefusedException where the altitude is outside its range or not a number
     */
    public static double pressurePa(double altitudeM) {
        double warmth = 1 - LAPSE_K_PER_M / SEA_LEVEL_K * ALTITUDE.require("altitudeM", altitudeM);
        return Constants.STANDARD_ATMOSPHERE_PA * Math.pow(warmth, EXPONENT);
    }
}
