package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Wall friction in a tube wound to a coil, as the Darcy friction factor of the pressure drop f (L/D) ρv²/2.
 *
 * <p>The bend drives the water across the tube, which drags more and keeps it laminar longer. Laminar: C. M. White, Proc. R. Soc. A 123
 * (1929) 645, {@code f = f₀ / (1 − (1 − (11.6/De)^0.45)^2.22)}, De = Re √(d/D). It turns turbulent at {@code 2300 (1 + 8.6 (d/D)^0.45)},
 * and from twice that follows {@code f₀ (1 + 28800/Re (d/D)^0.62)}, f₀ of the straight tube (E. F. Schmidt, Chemie-Ing.-Techn. 39
 * (1967) 781); between them lies a straight share of the two, no source, so that the pressure drop grows with every flow.
 *
 * <p>Schmidt's own laminar law gives up to a third more than White's near a Reynolds number of 3500 (d/D = 0.1), where Mori and
 * Nakayama's (from memory) gives 5 % more; tubes wound tighter than a third or looser than a hundredth were not measured.
 */
public final class WoundTube {

    /** The curvatures accepted: bore over the diameter of the winding, middle of tube to middle. */
    public static final Allowed CURVATURE = new Allowed(0, 0.35, "");

    private static final double STRAIGHT_TO_DEAN = 11.6;

    private WoundTube() {}

    /**
     * Reynolds number at which the flow turns turbulent.
     *
     * @param curvature bore over winding, 0 to 0.35
     * @throws RefusedException where it is outside its range or not a number
     */
    public static double turnsAt(double curvature) {
        return 2300 * (1 + 8.6 * Math.pow(CURVATURE.require("curvature", curvature), 0.45));
    }

    /**
     * Darcy friction factor times the Reynolds number.
     *
     * @param reynolds Reynolds number on the bore, 0 to 1e8
     * @param relativeRoughness roughness over bore, 0 to 0.05
     * @param curvature bore over winding, 0 to 0.35; 0 is straight tube by {@link Friction}
     * @return a plain number
     * @throws RefusedException where one is outside its range or not a number
     */
    public static double darcyTimesReynolds(double reynolds, double relativeRoughness, double curvature) {
        double turns = turnsAt(curvature);
        double laminar = 64 * laminarTimes(reynolds, curvature);
        double share = Math.min(Math.max(reynolds / turns - 1, 0), 1);
        if (share == 0) {
            return laminar;
        }
        double turbulent = Friction.darcyTimesReynolds(reynolds, relativeRoughness)
                * (1 + 28_800 / reynolds * Math.pow(curvature, 0.62));
        return laminar + share * (Math.max(turbulent, laminar) - laminar);
    }

    /** How many times the friction of laminar flow in straight tube. */
    private static double laminarTimes(double reynolds, double curvature) {
        double dean = reynolds * Math.sqrt(curvature);
        if (dean <= STRAIGHT_TO_DEAN) {
            return 1;
        }
        return 1 / (1 - Math.pow(1 - Math.pow(STRAIGHT_TO_DEAN / dean, 0.45), 1 / 0.45));
    }
}
