package loftcoil.engine.heat;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Radiation between a small grey surface and large surroundings; Incropera, 6th ed., equations 1.7 to 1.9. The
 * Stefan-Boltzmann constant is the exact SI value (CODATA 2018).
 */
public final class GreyRadiation {

    /** The temperatures accepted, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(-100, 1500, "°C");

    /** The emissivities accepted: the share of a black body's radiation, not percent. */
    public static final Allowed EMISSIVITY = new Allowed(0, 1, "");

    private GreyRadiation() {}

    /**
     * Heat radiated net by the surface.
     *
     * @param surfaceC temperature of the surface in °C, -100 to 1500
     * @param aroundC temperature of the surroundings in °C, -100 to 1500
     * @param emissivity emissivity of the surface, 0 to 1
     * @return W/m², positive where the surface loses heat
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double fluxWPerM2(double surfaceC, double aroundC, double emissivity) {
        return filmWPerM2K(surfaceC, aroundC, emissivity) * (surfaceC - aroundC);
    }

    /**
     * The same as a film: the flux for each kelvin between surface and surroundings, finite where they are equal.
     *
     * @param surfaceC temperature of the surface in °C, -100 to 1500
     * @param aroundC temperature of the surroundings in °C, -100 to 1500
     * @param emissivity emissivity of the surface, 0 to 1
     * @return W/(m² K)
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double filmWPerM2K(double surfaceC, double aroundC, double emissivity) {
        double surface = TEMPERATURE.require("surfaceC", surfaceC) + Constants.KELVIN_AT_ZERO_C;
        double around = TEMPERATURE.require("aroundC", aroundC) + Constants.KELVIN_AT_ZERO_C;
        double grey = EMISSIVITY.require("emissivity", emissivity);
        return grey
                * Constants.STEFAN_BOLTZMANN_W_PER_M2_K4
                * (surface * surface + around * around)
                * (surface + around);
    }
}
