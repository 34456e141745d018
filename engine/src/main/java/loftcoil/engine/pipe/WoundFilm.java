package loftcoil.engine.pipe;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.heat.InsideFilm;

/**
 * Forced flow inside a wound tube as a Nusselt number on the bore: E. F. Schmidt, Chemie-Ing.-Techn. 39 (1967) 781 (from memory, as
 * public libraries have it), laminar to {@link WoundTube#turnsAt}, a middle law to 22 000, turbulent beyond. Where two of them meet
 * they are up to a tenth apart, and the larger is not taken: the step stands. Within 15 % of measured coils, as its author says.
 */
public final class WoundFilm {

    private static final double TURBULENT_FROM = 22_000;

    private WoundFilm() {}

    /**
     * Nusselt number of the mean round the tube.
     *
     * @param reynolds Reynolds number on the bore, 0 to 5 million
     * @param prandtl Prandtl number of the water, 0.5 to 2000
     * @param curvature bore over winding, more than 0 to 0.35
     * @return a plain number
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double nusselt(double reynolds, double prandtl, double curvature) {
        double re = InsideFilm.REYNOLDS.require("reynolds", reynolds);
        double pr = Math.cbrt(InsideFilm.PRANDTL.require("prandtl", prandtl));
        double turns = WoundTube.turnsAt(curvature);
        if (re <= turns) {
            double power = 0.5 + 0.2903 * Math.pow(curvature, 0.194);
            return 3.65 + 0.08 * (1 + 0.8 * Math.pow(curvature, 0.9)) * Math.pow(re, power) * pr;
        }
        if (re <= TURBULENT_FROM) {
            double power = 0.8 - 0.22 * Math.pow(curvature, 0.1);
            return 0.023 * (1 + 14.8 * (1 + curvature) * Math.cbrt(curvature)) * Math.pow(re, power) * pr;
        }
        return 0.023 * (1 + 3.6 * (1 - curvature) * Math.pow(curvature, 0.8)) * Math.pow(re, 0.8) * pr;
    }
}
