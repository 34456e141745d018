package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * How much of a month's sun is diffuse: Erbs, Klein and Duffie (1982), Solar Energy 28, 293, as Duffie and Beckman equation
 * 2.12.1. Fitted for clearness 0.3 to 0.8; below, the cubic is carried on and never exceeds 1; above, the value at 0.8 is
 * kept.
 */
public final class Erbs {

    private static final Allowed CLEARNESS = new Allowed(0, 1, "");
    private static final Allowed HOUR_ANGLE = new Allowed(0, 180, "°");
    private static final double CLEAREST_FITTED = 0.8;
    private static final double WINTER_BELOW_DEG = 81.4;

    private Erbs() {}

    /**
     * Monthly mean diffuse fraction.
     *
     * @param clearness the month's sun on the ground over that outside the air, 0 to 1
     * @param sunsetHourAngleDeg see {@link Extraterrestrial#sunsetHourAngleDeg}, 0 to 180
     * @return diffuse over global, 0 to 1
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double monthlyDiffuseFraction(double clearness, double sunsetHourAngleDeg) {
        double k = Math.min(CLEAREST_FITTED, CLEARNESS.require("clearness", clearness));
        boolean winter = HOUR_ANGLE.require("sunsetHourAngleDeg", sunsetHourAngleDeg) <= WINTER_BELOW_DEG;
        double fraction = winter
                ? 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k))
                : 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
        return Math.min(1, fraction);
    }
}
