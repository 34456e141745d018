package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.water.Water;

/**
 * Water that stands still in the frost: how long until it is at 0 °C, and how long until it is ice. The cooling is that of the ASHRAE
 * Handbook of Fundamentals, chapter 23, equation 1, and of ISO 12241 (cooling and freezing times in pipes and vessels; from memory), the
 * freezing that of ISO 12241: all heat of fusion passes at 0 °C through the same resistance. On the sooner side: the heat of the metal and of the
 * lagging and what the ice itself holds back are left out. On the later side: water in which nothing starts the ice cools some kelvin under
 * 0 °C first and then a plug grows within minutes, so that a pipe may be shut long before it is frozen through.
 *
 * @param kg water, kg; above 0 to 10 000; of a pipe, in a metre
 * @param wPerK what is lost for each kelvin above the surroundings, W/K; above 0 to 10 000; of a pipe, by a metre
 */
public record FreezingWater(double kg, double wPerK) {

    private static final Allowed SIZE = new Allowed(1e-9, 1e4, "");
    private static final Allowed FROM = new Allowed(0, 100, "°C");
    private static final Allowed FROST = new Allowed(-100, -1e-6, "°C");
    private static final Allowed SHARE = new Allowed(0, 1, "");

    /** Between 0 and 10 °C, J/(kg K); IAPWS SR6-08 gives 4196 to 4220. */
    private static final double J_PER_KG_K = 4205;

    /** Heat of fusion at 0 °C, J/kg; IAPWS R10-06 with R6-95: 333.4 kJ/kg. */
    private static final double FUSION_J_PER_KG = 333_400;

    private static final double S_PER_H = 3600;
    private static final double COOL_C = 5;

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where one is outside its range or not a number
     */
    public FreezingWater {
        SIZE.require("kg", kg);
        SIZE.require("wPerK", wPerK);
    }

    /**
     * The water in a metre of pipe.
     *
     * @param tube the tube
     * @param lagging its lagging, {@link Lagging#NONE} for a bare one
     * @param aroundC temperature around it, °C, -40 to 250
     */
    public static FreezingWater inPipe(Tube tube, Lagging lagging, double aroundC) {
        return new FreezingWater(
                tube.volumeM3PerM() * Water.densityKgPerM3(COOL_C), PipeLoss.wPerMK(tube, lagging, COOL_C, aroundC));
    }

    /**
     * Time until it is at 0 °C.
     *
     * @param fromC temperature it starts from, °C, 0 to 100
     * @param aroundC temperature around it, °C, -100 to under 0
     * @return h
     * @throws loftcoil.engine.fault.RefusedException where a temperature is outside its range or not a number
     */
    public double hoursToZero(double fromC, double aroundC) {
        double frostC = FROST.require("aroundC", aroundC);
        return kg * J_PER_KG_K / wPerK * Math.log((FROM.require("fromC", fromC) - frostC) / -frostC) / S_PER_H;
    }

    /**
     * Time from 0 °C until so much of it is ice.
     *
     * @param share of the water that is ice, 0 to 1
     * @param aroundC temperature around it, °C, -100 to under 0
     * @return h
     * @throws loftcoil.engine.fault.RefusedException where one is outside its range or not a number
     */
    public double hoursFreezing(double share, double aroundC) {
        return SHARE.require("share", share)
                * kg
                * FUSION_J_PER_KG
                / (wPerK * -FROST.require("aroundC", aroundC))
                / S_PER_H;
    }
}
