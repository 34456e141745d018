package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.gas.Air;

/**
 * The air the fire draws: heat of flue gas and room is counted above its temperature.
 *
 * @param tempC temperature in °C, -40 to 50
 * @param pressurePa absolute pressure in Pa, 40 000 to 120 000
 */
public record RoomAir(double tempC, double pressurePa) {

    private static final Allowed TEMPERATURE = new Allowed(-40, 50, "°C");

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public RoomAir {
        TEMPERATURE.require("tempC", tempC);
        Air.PRESSURE.require("pressurePa", pressurePa);
    }
}
