package loftcoil.engine.supply;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;

/**
 * The wait for hot water at a tap, as a plug: the water that stood in the pipe runs off, then it is hot. Left out: what the
 * tube takes up to get warm, which adds a tenth to a third for copper, and mixing at the front.
 *
 * @param seconds time until it runs hot, s
 * @param wastedL water run off cold, L
 * @param coolingJ heat left in the pipe after the draw, which then cools to the surroundings, J
 */
public record HotWait(double seconds, double wastedL, double coolingJ) {

    private static final Allowed FLOW = new Allowed(1e-6, 1e5, "L/min");

    /**
     * The wait at a tap.
     *
     * @param standingM3 water between tank and tap in m³, {@link GravitySupply#standingM3}
     * @param flowLPerMin flow in L/min, above 0 (1e-6) to 100 000
     * @param pipe temperatures of hot water and surroundings
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static HotWait of(double standingM3, double flowLPerMin, Warmth pipe) {
        double litres = 1000 * new Allowed(0, 10, "m³").require("standingM3", standingM3);
        double heat = WaterHeat.jPerKg(pipe.hotC()) - WaterHeat.jPerKg(pipe.aroundC());
        double cooling = Math.max(0, heat) * standingM3 * Water.densityKgPerM3(pipe.hotC());
        return new HotWait(60 * litres / FLOW.require("flowLPerMin", flowLPerMin), litres, cooling);
    }

    /**
     * Temperatures around a pipe.
     *
     * @param hotC temperature of the hot water in °C, 0 to 110
     * @param aroundC temperature the pipe cools to in °C, 0 to 110
     */
    public record Warmth(double hotC, double aroundC) {}
}
