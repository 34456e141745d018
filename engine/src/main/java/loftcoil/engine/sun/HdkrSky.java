package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Sun and sky on a tilted window by the model of Hay, Davies, Klucher and Reindl, Duffie and Beckman equation 2.16.7: the
 * diffuse light is divided into a part close about the sun, a part from the whole sky and a brighter band at the horizon.
 */
public final class HdkrSky {

    /** Share of the light the ground throws back, 0 to 1. */
    public static final Allowed ALBEDO = new Allowed(0, 1, "");

    private HdkrSky() {}

    /**
     * The light on a window.
     *
     * @param facing how the window lies
     * @param sun where the sun stands
     * @param light what falls on level ground
     * @param albedo share the ground throws back, 0 to 1: 0.2 for grass and soil, 0.7 for fresh snow
     * @return {@link TiltedLight#DARK} where the sun is down
     * @throws RefusedException where the albedo is outside its range or not a number
     */
    public static TiltedLight on(Facing facing, SunAngles sun, SkyLight light, double albedo) {
        double reflected = ALBEDO.require("albedo", albedo);
        double cosZenith = sun.cosZenith();
        if (!(cosZenith > 0) || light.globalWPerM2() == 0) {
            return TiltedLight.DARK;
        }
        double beam = light.beamWPerM2();
        double clear = Math.min(1, beam / (light.outsideNormalWPerM2() * cosZenith));
        double horizonBand =
                Math.sqrt(beam / light.globalWPerM2()) * Math.pow(Math.sin(Math.toRadians(facing.tiltDeg()) / 2), 3);
        double diffuse = light.diffuseWPerM2();
        return new TiltedLight(
                (beam + diffuse * clear) * facing.beamRatio(sun),
                diffuse * (1 - clear) * facing.skyShare() * (1 + horizonBand),
                light.globalWPerM2() * reflected * (1 - facing.skyShare()));
    }
}
