package loftcoil.engine.caution;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.tank.LegionellaLife;

/**
 * How fast legionella die in hot water, by the one law of {@link LegionellaLife}, for readers who name a temperature. Germs in slime
 * and scale live longer.
 */
public final class LegionellaDeath {

    /** Temperatures for which it holds, °C. */
    public static final Allowed TEMPERATURE = new Allowed(LegionellaLife.DIES_FROM_C, LegionellaLife.DIES_TO_C, "°C");

    private LegionellaDeath() {}

    /**
     * Time for nine in ten to die.
     *
     * @param waterC temperature of the water in °C, 50 to 70
     * @return min
     * @throws loftcoil.engine.fault.RefusedException where the temperature is outside its range or not a number
     */
    public static double ninetyPercentMin(double waterC) {
        return LegionellaLife.ninetyPercentMin(TEMPERATURE.require("waterC", waterC));
    }
}
