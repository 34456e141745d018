package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;

/**
 * A radiator beside a tank, joined to it near its top and near its base without a valve: it gives off heat whenever the tank is warmer than
 * the place, and more than its share when the tank is hot. The fire's loop does not pass through it.
 *
 * <p>Heat by the characteristic of EN 442-2, Φ = Φ50 (ΔT/50 K)^n with n = {@value #EXPONENT} (EN 442 radiators: 1.2 to 1.4, from memory).
 * With no pump its water comes back some 20 K cooler than the tank, so that it is on average 10 K cooler: of what a tank at 75 °C in a room
 * of 20 °C would give, {@value #BY_GRAVITY} is left, and that is taken everywhere. Left out: that the water is taken at the top and comes
 * back at the base; the heat is taken evenly from all of the tank.
 *
 * @param ratedW heat at 50 K over the place, as radiators are sold, W; 0 to 5000
 */
public record TankRadiator(double ratedW) {

    static final double EXPONENT = 1.3;
    static final double BY_GRAVITY = 0.75;
    private static final double RATED_K = 50;
    private static final Allowed RATED = new Allowed(0, 5000, "W");

    /** No radiator. */
    public static final TankRadiator NONE = new TankRadiator(0);

    /**
     * Checks the rating.
     *
     * @throws loftcoil.engine.fault.RefusedException where it is outside its range or not a number
     */
    public TankRadiator {
        RATED.require("ratedW", ratedW);
    }

    /** Heat given off for each kelvin between water and place, W/K; 0 where the water is no warmer. */
    public double wPerK(Standing at) {
        double overK = at.waterC() - at.aroundC();
        return overK > 0 ? BY_GRAVITY * ratedW * Math.pow(overK / RATED_K, EXPONENT) / overK : 0;
    }
}
