package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.water.Water;

/**
 * Water that enters the coil.
 *
 * @param flowKgPerS mass flow in kg/s, 0.0001 to 2, in whichever direction
 * @param inletC temperature at the coil's inlet in °C, 0 to 110
 */
public record WaterFlow(double flowKgPerS, double inletC) {

    /** The flows accepted, in kg/s. */
    public static final Allowed FLOW = new Allowed(1e-4, 2, "kg/s");

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public WaterFlow {
        FLOW.require("flowKgPerS", flowKgPerS);
        Water.TEMPERATURE.require("inletC", inletC);
    }

    /** The same water as far as it can be computed: what lies beyond an accepted range counts as the end of it. */
    public static WaterFlow within(double flowKgPerS, double inletC) {
        return new WaterFlow(
                Math.min(Math.max(flowKgPerS, FLOW.low()), FLOW.high()),
                Math.min(Math.max(inletC, 0), Water.TEMPERATURE.high()));
    }
}
