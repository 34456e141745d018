package loftcoil.engine.sun;

/**
 * How the air warms and cools about its daily mean: a cosine that peaks at 15:00 by the clock (common practice, no source).
 * The range from lowest to highest is the one for which the formula of Hargreaves and Samani gives back the day's sun: FAO
 * Irrigation and Drainage Paper 56, equation 50, turned round, {@code range = (clearness / 0.16)²} for inland places; held
 * to 20 K. The mean of the day is kept.
 */
final class AirDay {

    private static final double INLAND_PER_ROOT_K = 0.16;
    private static final double WIDEST_K = 20;
    private static final double WARMEST_H = 15;

    private AirDay() {}

    /** From lowest to highest in K, for the day's sun on the ground over that outside the air. */
    static double rangeK(double clearness) {
        double root = clearness / INLAND_PER_ROOT_K;
        return Math.min(WIDEST_K, root * root);
    }

    /** Air temperature in °C at a clock hour of a day of the given mean and clearness. */
    static double airC(double meanC, double clearness, double hour) {
        return meanC + rangeK(clearness) / 2 * Math.cos(2 * Math.PI * (hour - WARMEST_H) / 24);
    }
}
