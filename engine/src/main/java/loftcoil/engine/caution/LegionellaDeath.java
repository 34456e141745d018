package loftcoil.engine.caution;

import loftcoil.engine.fault.Allowed;

/**
 * How fast legionella die in hot water: time for nine in ten to die, its logarithm straight over temperature through two published
 * points: 2 minutes at 60 °C and 80 to 124 minutes, depending on strain, at 50 °C (WHO, Legionella and the prevention of
 * legionellosis, 2007, after Dennis et al.; read as restated in public). The lower point is taken at the geometric mean of its range,
 * 100 minutes, which makes tenfold in 5.9 K. Germs in slime and scale live longer.
 */
public final class LegionellaDeath {

    /** Temperatures for which it holds, °C. */
    public static final Allowed TEMPERATURE = new Allowed(50, 70, "°C");

    private static final double AT_60_MIN = 2;
    private static final double AT_50_MIN = Math.sqrt(80.0 * 124.0);

    private LegionellaDeath() {}

    /**
     * Time for nine in ten to die.
     *
     * @param waterC temperature of the water in °C, 50 to 70
     * @return min
     * @throws loftcoil.engine.fault.RefusedException where the temperature is outside its range or not a number
     */
    public static double ninetyPercentMin(double waterC) {
        double above50 = TEMPERATURE.require("waterC", waterC) - 50;
        return AT_50_MIN * Math.pow(AT_60_MIN / AT_50_MIN, above50 / 10);
    }
}
