package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Wall friction of fully developed flow in a round pipe, as the Darcy friction factor f of the pressure drop f (L/D) ρv²/2.
 *
 * <p>Laminar below a Reynolds number of 2000: 64/Re. Turbulent from 4000: Colebrook and White (Colebrook, J. Inst. Civil
 * Eng. 11 (1939) 133), solved to a residual below 1e-10. Between them no law is published that holds: the two are blended
 * by a smooth step, so that pressure drop grows without a kink as flow grows; real flow there switches back and forth and
 * can be off by 30 %. The turbulent law scatters by about 10 %.
 */
public final class Friction {

    /** Height of the roughness of clean drawn copper or brass tube, in m: Moody, Trans. ASME 66 (1944) 671. */
    public static final double DRAWN_TUBE_ROUGHNESS_M = 1.5e-6;

    /** The Reynolds number up to which flow is taken as laminar. */
    public static final double LAMINAR_TO = 2000;

    /** The Reynolds number from which flow is taken as turbulent. */
    public static final double TURBULENT_FROM = 4000;

    /** The Reynolds numbers accepted by {@link #darcyTimesReynolds}; those of {@link #darcy} start above zero. */
    public static final Allowed REYNOLDS = new Allowed(0, 1e8, "");

    /** The relative roughnesses accepted: height of the roughness over the bore. */
    public static final Allowed ROUGHNESS = new Allowed(0, 0.05, "");

    private static final Allowed MOVING = new Allowed(1e-9, 1e8, "");

    private static final double TWO_OVER_LN10 = 2 / Math.log(10);
    private static final int MOST_STEPS = 20;

    private Friction() {}

    /**
     * Darcy friction factor.
     *
     * @param reynolds Reynolds number on the bore, 1e-9 to 1e8
     * @param relativeRoughness roughness over bore, 0 to 0.05
     * @return a plain number; four times the Fanning factor
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double darcy(double reynolds, double relativeRoughness) {
        return darcyTimesReynolds(MOVING.require("reynolds", reynolds), relativeRoughness) / reynolds;
    }

    /**
     * Darcy friction factor times the Reynolds number, which stays finite as flow stops: the pressure drop is this times
     * viscosity × velocity × length / (2 bore²).
     *
     * @param reynolds Reynolds number on the bore, 0 to 1e8
     * @param relativeRoughness roughness over bore, 0 to 0.05
     * @return a plain number, 64 where flow is laminar
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double darcyTimesReynolds(double reynolds, double relativeRoughness) {
        double re = REYNOLDS.require("reynolds", reynolds);
        double rough = ROUGHNESS.require("relativeRoughness", relativeRoughness);
        if (re <= LAMINAR_TO) {
            return 64;
        }
        double turbulent = colebrook(re, rough) * re;
        if (re >= TURBULENT_FROM) {
            return turbulent;
        }
        double part = (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
        double share = part * part * (3 - 2 * part);
        return 64 + share * (turbulent - 64);
    }

    /**
     * Newton's steps for x = 1/√f from Haaland's explicit value without its power, which costs more than a step. The
     * function is increasing and bends down, so a step can only overshoot once; its bend is so slight that a step of a
     * ten-millionth leaves nothing but rounding.
     */
    private static double colebrook(double reynolds, double rough) {
        double wall = rough / 3.7;
        double slip = 2.51 / reynolds;
        double x = -0.9 * TWO_OVER_LN10 * Math.log(wall + 6.9 / reynolds);
        for (int i = 0; i < MOST_STEPS; i++) {
            double inside = wall + slip * x;
            double step = (x + TWO_OVER_LN10 * Math.log(inside)) / (1 + TWO_OVER_LN10 * slip / inside);
            x -= step;
            if (Math.abs(step) < 1e-7 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }
}
