package loftcoil.engine.study;

import loftcoil.engine.fault.Allowed;

/**
 * What is not surely known of a loop.
 *
 * @param coilHeat heat the coil takes
 * @param roughness roughness of the tube
 * @param fittings losses of fittings, joints and ports
 * @param heatLoss heat lost by the legs: lagging as built, damp and gaps
 * @param weatherM swing of the air pressure, as metres of altitude, two chances in three within; 0 to 1000; 10 hPa is about 85 m
 */
public record LoopDoubts(Doubt coilHeat, Doubt roughness, Doubt fittings, Doubt heatLoss, double weatherM) {

    private static final Allowed WEATHER = new Allowed(0, 1000, "m");

    /**
     * The usual doubts: coil heat ±40 % (the fire's own estimate), roughness from half to tenfold (new tube to scale), fittings
     * ±25 % and more upwards for burrs (two-K method and soldering), lagging −10 % to +30 %, weather ±10 hPa. All but the first
     * are common practice, no source.
     */
    public static final LoopDoubts USUAL =
            new LoopDoubts(new Doubt(0.6, 1.4), new Doubt(0.5, 10), new Doubt(0.75, 1.4), new Doubt(0.9, 1.3), 85);

    /**
     * Checks the weather.
     *
     * @throws loftcoil.engine.fault.RefusedException where it is outside its range or not a number
     */
    public LoopDoubts {
        WEATHER.require("weatherM", weatherM);
    }
}
