package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;

/**
 * Sun on the level ground under a cloudless sky: Haurwitz, Journal of Meteorology 2 (1945) 154 and 3 (1946) 123, as restated by
 * Reno, Hansen and Stein, report SAND2012-2389, {@code 1098 cos z exp(-0.059/cos z)}. It was fitted near the sea; a higher place, with
 * less air above it, gets more by the altitude term of FAO Irrigation and Drainage Paper 56, equation 37
 * ({@code (0.75 + 2e-5 m) / 0.75}). It knows no haze.
 */
public final class ClearSun {

    private static final Allowed COSINE = new Allowed(-1, 1, "");
    private static final Allowed ALTITUDE = new Allowed(-500, 6000, "m");
    private static final double AT_THE_ZENITH_W_PER_M2 = 1098;
    private static final double FADES = 0.059;
    private static final double CLEARNESS_AT_SEA = 0.75;
    private static final double CLEARER_PER_M = 2e-5;

    private ClearSun() {}

    /**
     * Beam and diffuse on the horizontal.
     *
     * @param cosZenith cosine of the sun's zenith angle, -1 to 1
     * @param altitudeM altitude above the sea in m, -500 to 6000
     * @return W/m²; 0 at night
     * @throws loftcoil.engine.fault.RefusedException where either is outside its range or not a number
     */
    public static double globalWPerM2(double cosZenith, double altitudeM) {
        double height = COSINE.require("cosZenith", cosZenith);
        double higher = CLEARER_PER_M * ALTITUDE.require("altitudeM", altitudeM) / CLEARNESS_AT_SEA;
        return height > 0 ? (1 + higher) * AT_THE_ZENITH_W_PER_M2 * height * Math.exp(-FADES / height) : 0;
    }
}
