package loftcoil.engine.use;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;

/**
 * Water wanted once a day at a tap, mixed to a temperature.
 *
 * @param atH hour of the day it starts, 0 to below 24 (23.999)
 * @param litres volume of mixed water in L, 0 to 2000
 * @param mixedC temperature wanted in °C, 0 to 95
 * @param tap name of the tap
 */
public record DrawOff(double atH, double litres, double mixedC, String tap) {

    /** The hours accepted. */
    public static final Allowed AT = new Allowed(0, 23.999, "h");

    /** The volumes accepted, in L, here and where a design is read. */
    public static final Allowed LITRES = new Allowed(0, 2000, "L");

    /** The temperatures accepted, in °C. */
    public static final Allowed MIXED = new Allowed(0, 95, "°C");

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public DrawOff {
        List<Fault> faults = new ArrayList<>();
        AT.faultIn("atH", atH).ifPresent(faults::add);
        LITRES.faultIn("litres", litres).ifPresent(faults::add);
        MIXED.faultIn("mixedC", mixedC).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** Mass of the mixed water in kg, at the density of the temperature wanted. */
    public double mixedKg() {
        return litres / 1000 * Water.densityKgPerM3(mixedC);
    }

    /**
     * Heat wanted above the cold supply.
     *
     * @param coldC temperature of the cold supply in °C, 0 to 110
     * @return J; 0 where the supply is warm enough
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double wantedJ(double coldC) {
        return mixedKg() * Math.max(0, WaterHeat.jPerKg(mixedC) - WaterHeat.jPerKg(coldC));
    }
}
