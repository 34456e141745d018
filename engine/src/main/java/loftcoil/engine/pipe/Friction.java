package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Wall friction of fully developed flow in a round pipe, as the Darcy friction factor f of the pressure drop f (L/D) ρv²/2.
 *
 * <p>Laminar below a Reynolds number of 2000: 64/Re. Turbulent from 3100: Colebrook and White (Colebrook, J. Inst. Civil
 * Eng. 11 (1939) 133), solved to a residual below 1e-10. Between them the measured smooth pipe is followed (B. J. McKeon, C. J.
 * Swanson, M. V. Zagarola, R. J. Donnelly, A. J. Smits, J. Fluid Mech. 511 (2004) 41, read in the tables of an open library): it
 * stays near the laminar law up to about 2870 and has reached the turbulent one by about 3080. The share of the turbulent law is
 * the step {@code p⁸(9 − 8p)}, which leaves no kink and lets the pressure drop grow with every flow.
 *
 * <p>Against those measured points: from 3080 to 19 000 within 3 %; from 2868 to 3050, where the flow switches back and forth,
 * 12 % too high to 11 % too low, the points themselves scattering by 20 %; from 2000 to 2600 15 to 18 % too low; from 1390
 * to 2000 4 to 14 % too low, although 64/Re is exact for developed flow (why that pipe read higher is not known here). A real
 * pipe with bends may be turbulent from 2300 or stay laminar past 3000: between those the factor can be half or double. The
 * turbulent law itself scatters by about 10 %.
 */
public final class Friction {

    /** Height of the roughness of clean drawn copper or brass tube, in m: Moody, Trans. ASME 66 (1944) 671. */
    public static final double DRAWN_TUBE_ROUGHNESS_M = 1.5e-6;

    /** The Reynolds number up to which flow is taken as laminar. */
    public static final double LAMINAR_TO = 2000;

    /** The Reynolds number from which flow is taken as turbulent. */
    public static final double TURBULENT_FROM = 3100;

    /** How many times later or sooner than here flow may be taken to turn turbulent. */
    public static final Allowed TRANSITION = new Allowed(0.5, 2, "");

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
        return darcyTimesReynolds(reynolds, relativeRoughness, 1);
    }

    /**
     * The same where flow turns turbulent later or sooner: both ends of the transition times a factor.
     *
     * @param reynolds Reynolds number on the bore, 0 to 1e8
     * @param relativeRoughness roughness over bore, 0 to 0.05
     * @param transitionTimes factor on the Reynolds numbers of 2000 and 3100 between which flow turns, 0.5 to 2
     * @return a plain number, 64 where flow is laminar
     * @throws RefusedException where one is outside its range or not a number
     */
    public static double darcyTimesReynolds(double reynolds, double relativeRoughness, double transitionTimes) {
        double re = REYNOLDS.require("reynolds", reynolds);
        double rough = ROUGHNESS.require("relativeRoughness", relativeRoughness);
        double laminarTo = LAMINAR_TO * TRANSITION.require("transitionTimes", transitionTimes);
        double turbulentFrom = TURBULENT_FROM * transitionTimes;
        if (re <= laminarTo) {
            return 64;
        }
        double turbulent = colebrook(re, rough) * re;
        if (re >= turbulentFrom) {
            return turbulent;
        }
        double part = (re - laminarTo) / (turbulentFrom - laminarTo);
        double square = part * part;
        double fourth = square * square;
        double share = fourth * fourth * (9 - 8 * part);
        return 64 + share * (turbulent - 64);
    }

    /**
     * Steps of Halley's method for x = 1/√f from Haaland's explicit value without its power, which costs more than a step. The
     * function is increasing and bends down, and its bend is so slight that a step of a
     * ten-thousandth leaves nothing but rounding still to go.
     */
    private static double colebrook(double reynolds, double rough) {
        double wall = rough / 3.7;
        double slip = 2.51 / reynolds;
        double x = -0.9 * TWO_OVER_LN10 * Math.log(wall + 6.9 / reynolds);
        for (int i = 0; i < MOST_STEPS; i++) {
            double inside = wall + slip * x;
            double grade = slip / inside;
            double value = x + TWO_OVER_LN10 * Math.log(inside);
            double slope = 1 + TWO_OVER_LN10 * grade;
            double bend = -TWO_OVER_LN10 * grade * grade;
            double step = value * slope / (slope * slope - 0.5 * value * bend);
            x -= step;
            if (Math.abs(step) < 1e-4 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }
}
