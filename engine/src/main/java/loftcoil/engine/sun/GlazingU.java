package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * The U value of panes alone as the glass trade declares it: EN 673:2011, surface coefficients 7.7 inside and 25 W/(m² K)
 * outside, 15 K over the gaps together, mean 283 K, centre of the glass without edge or frame. The declared value is for a
 * vertical pane; the standard gives its gap convection also for 45 degrees and horizontal with the heat going up, between
 * which a straight line is taken. (Constants from memory; checked against published U values.)
 *
 * <p>What the warm tank really loses through the window is not this: see {@link WindowLoss}.
 */
public final class GlazingU {

    private static final double INSIDE_W_PER_M2K = 7.7;
    private static final double OUTSIDE_W_PER_M2K = 25;
    private static final double GLASS_W_PER_MK = 1.0;
    private static final double MEAN_K = 283;
    private static final double ACROSS_GAPS_K = 15;
    private static final int TURNS = 30;
    private static final double GRAVITY_M_PER_S2 = 9.81;
    private static final double STEFAN_BOLTZMANN = 5.67e-8;
    private static final Allowed GAP = new Allowed(0.003, 0.2, "m");

    private GlazingU() {}

    /**
     * The declared U value: vertical panes, air between.
     *
     * @param panes the panes
     * @param gapM air space between panes in m, 0.003 to 0.2; of no effect for a single pane
     * @return W/(m² K)
     * @throws RefusedException where the gap is outside its range or not a number
     */
    public static double declaredWPerM2K(PaneStack panes, double gapM) {
        return wPerM2K(panes, gapM, GlazingGas.AIR, 90);
    }

    /**
     * The U value at any tilt with any gas, the heat going up.
     *
     * @param panes the panes
     * @param gapM space between panes in m, 0.003 to 0.2; of no effect for a single pane
     * @param gas what fills it
     * @param tiltDeg from the horizontal in degrees, 0 to 90
     * @return W/(m² K)
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double wPerM2K(PaneStack panes, double gapM, GlazingGas gas, double tiltDeg) {
        int gaps = panes.panes() - 1;
        double resistance = 1 / INSIDE_W_PER_M2K
                + 1 / OUTSIDE_W_PER_M2K
                + panes.panes() * panes.glass().thicknessM() / GLASS_W_PER_MK;
        if (gaps > 0) {
            double tilt = Facing.TILT.require("tiltDeg", tiltDeg);
            resistance += gapsM2KPerW(panes, GAP.require("gapM", gapM), gas, tilt);
        }
        return 1 / resistance;
    }

    /** The gaps together. They share the difference by their resistances, which depend on it: settled by turns, as the standard does. */
    private static double gapsM2KPerW(PaneStack panes, double gapM, GlazingGas gas, double tiltDeg) {
        double plain = panes.glass().emissivity();
        double coated = radiationWPerM2K(panes.effectiveCoat().emissivity(plain), plain);
        double bare = radiationWPerM2K(plain, plain);
        int others = panes.panes() - 2;
        double acrossCoatedK = ACROSS_GAPS_K / (others + 1);
        double total = 0;
        for (int turn = 0; turn < TURNS; turn++) {
            double first = 1 / (coated + gasWPerM2K(gapM, acrossCoatedK, gas, tiltDeg));
            double acrossOtherK = others > 0 ? (ACROSS_GAPS_K - acrossCoatedK) / others : 0;
            double rest = others > 0 ? others / (bare + gasWPerM2K(gapM, acrossOtherK, gas, tiltDeg)) : 0;
            total = first + rest;
            acrossCoatedK = ACROSS_GAPS_K * first / total;
        }
        return total;
    }

    private static double radiationWPerM2K(double one, double other) {
        return 4 * STEFAN_BOLTZMANN * MEAN_K * MEAN_K * MEAN_K / (1 / one + 1 / other - 1);
    }

    private static double gasWPerM2K(double gapM, double differenceK, GlazingGas gas, double tiltDeg) {
        double kinematic = gas.viscosityPaS() / gas.densityKgPerM3();
        double grashof = GRAVITY_M_PER_S2 * gapM * gapM * gapM * differenceK / (MEAN_K * kinematic * kinematic);
        double prandtl = gas.viscosityPaS() * gas.specificHeatJPerKgK() / gas.conductivityWPerMK();
        double nusselt = Math.max(1, nusselt(grashof * prandtl, tiltDeg));
        return nusselt * gas.conductivityWPerMK() / gapM;
    }

    private static double nusselt(double rayleigh, double tiltDeg) {
        double level = 0.16 * Math.pow(rayleigh, 0.28);
        double half = 0.10 * Math.pow(rayleigh, 0.31);
        double upright = 0.035 * Math.pow(rayleigh, 0.38);
        return tiltDeg <= 45 ? level + (half - level) * tiltDeg / 45 : half + (upright - half) * (tiltDeg - 45) / 45;
    }
}
