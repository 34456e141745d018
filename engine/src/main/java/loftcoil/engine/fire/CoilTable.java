package loftcoil.engine.fire;

import loftcoil.engine.water.Water;

/**
 * The heat of a coil against flow and inlet temperature of its water, worked out once so that a year of minutes can ask for it
 * without solving anything and without allocating. Linear between nodes every 5 K and every half doubling of the flow; at most 0.5 %
 * from {@link CoilInFire#at}, which a test measures.
 */
public final class CoilTable {

    private static final double STEP_K = 5;
    private static final int WARMTHS = 23;
    private static final double LEAST_FLOW = WaterFlow.FLOW.low();
    private static final int FLOWS = 29;

    private final double[] heatW;

    private CoilTable(double[] heatW) {
        this.heatW = heatW;
    }

    /** The table of a coil in a fire. */
    public static CoilTable of(CoilInFire fire) {
        double[] heat = new double[WARMTHS * FLOWS];
        for (int f = 0; f < FLOWS; f++) {
            for (int t = 0; t < WARMTHS; t++) {
                heat[f * WARMTHS + t] =
                        fire.at(LEAST_FLOW * Math.pow(2, f / 2.0), t * STEP_K).heatW();
            }
        }
        return new CoilTable(heat);
    }

    /**
     * The same coil with all heat in a proportion, such as the low or the high estimate over the best.
     *
     * @param times factor, 0 or more
     */
    public CoilTable times(double times) {
        double[] scaled = new double[heatW.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = heatW[i] * times;
        }
        return new CoilTable(scaled);
    }

    /**
     * Heat the water takes up.
     *
     * @param flowKgPerS mass flow in kg/s in either direction; below 0.0001 and above 1.6 as there
     * @param inletC temperature of the water at the coil's inlet in °C, 0 to 110
     * @return W
     * @throws loftcoil.engine.fault.RefusedException where the temperature is outside its range or not a number
     */
    public double heatW(double flowKgPerS, double inletC) {
        double warmth = Water.TEMPERATURE.require("inletC", inletC) / STEP_K;
        double halves = 2 * Math.log(Math.max(Math.abs(flowKgPerS), LEAST_FLOW) / LEAST_FLOW) / Math.log(2);
        double place = Math.min(halves, FLOWS - 1.0);
        int f = (int) Math.min(place, FLOWS - 2.0);
        int t = (int) Math.min(warmth, WARMTHS - 2.0);
        double low = along(f, t, warmth - t);
        return low + (along(f + 1, t, warmth - t) - low) * (place - f);
    }

    private double along(int f, int t, double part) {
        double from = heatW[f * WARMTHS + t];
        return from + (heatW[f * WARMTHS + t + 1] - from) * part;
    }
}
