package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Water;

/**
 * Temperatures at which a standing loss is taken.
 *
 * @param waterC temperature of the water in °C, 0 to 110
 * @param aroundC temperature of the air and surfaces around the tank in °C, -40 to 60
 */
public record Standing(double waterC, double aroundC) {

    /** The surroundings accepted, in °C. */
    public static final Allowed AROUND = new Allowed(-40, 60, "°C");

    /**
     * Checks the temperatures.
     *
     * @throws RefusedException where one is outside its range or not a number
     */
    public Standing {
        Water.TEMPERATURE.require("waterC", waterC);
        AROUND.require("aroundC", aroundC);
    }
}
