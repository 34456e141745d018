package loftcoil.engine.heat;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Forced flow inside a smooth round tube, fully developed, as a Nusselt number on the bore.
 *
 * <p>Laminar up to a Reynolds number of 2300 (Incropera, 6th ed., table 8.1), turbulent from 4000 (Gnielinski, Int. Chem.
 * Eng. 16 (1976) 359; Incropera equation 8.62, with the smooth-tube friction of Petukhov, equation 8.21), and between them
 * the straight line in the Reynolds number of Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134. Within 10 % where
 * turbulent. Where flow is slow, warm water rising in the tube carries more heat than the laminar value says.
 */
public final class InsideFilm {

    /** How the wall is heated or cooled, which laminar flow notices and turbulent flow does not. */
    public enum Wall {
        /** The wall has one temperature along the tube, as where a lagged pipe cools: 3.66. */
        EVEN_TEMPERATURE(3.66),
        /** The wall passes the same heat everywhere, as in a flame: 48/11, printed as 4.36. */
        EVEN_FLUX(48.0 / 11);

        private final double laminarNusselt;

        Wall(double laminarNusselt) {
            this.laminarNusselt = laminarNusselt;
        }

        /** The laminar Nusselt number. */
        public double laminarNusselt() {
            return laminarNusselt;
        }
    }

    /** The Reynolds numbers accepted by {@link #nusselt}. */
    public static final Allowed REYNOLDS = new Allowed(0, 5e6, "");

    /** The Reynolds numbers accepted by {@link #gnielinski}. */
    public static final Allowed TURBULENT_REYNOLDS = new Allowed(2300, 5e6, "");

    /** The Prandtl numbers accepted by the turbulent equation. */
    public static final Allowed PRANDTL = new Allowed(0.5, 2000, "");

    /** The Darcy friction factors accepted. */
    public static final Allowed DARCY = new Allowed(1e-4, 0.2, "");

    private static final double LAMINAR_TO = 2300;
    private static final double TURBULENT_FROM = 4000;

    private InsideFilm() {}

    /**
     * Nusselt number over all three regimes, continuous in the Reynolds number.
     *
     * @param reynolds Reynolds number on the bore, 0 to 5 million
     * @param prandtl Prandtl number of the water, 0.5 to 2000
     * @param wall how the wall is heated or cooled
     * @return a plain number
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double nusselt(double reynolds, double prandtl, Wall wall) {
        double re = REYNOLDS.require("reynolds", reynolds);
        double pr = PRANDTL.require("prandtl", prandtl);
        if (re <= LAMINAR_TO) {
            return wall.laminarNusselt();
        }
        if (re >= TURBULENT_FROM) {
            return gnielinski(re, pr, smoothDarcy(re));
        }
        double turbulent = gnielinski(TURBULENT_FROM, pr, smoothDarcy(TURBULENT_FROM));
        double share = (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
        return wall.laminarNusselt() + share * (turbulent - wall.laminarNusselt());
    }

    /**
     * Gnielinski's turbulent Nusselt number.
     *
     * @param reynolds Reynolds number on the bore, 2300 to 5 million
     * @param prandtl Prandtl number, 0.5 to 2000
     * @param darcy Darcy friction factor, 0.0001 to 0.2
     * @return a plain number
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double gnielinski(double reynolds, double prandtl, double darcy) {
        double re = TURBULENT_REYNOLDS.require("reynolds", reynolds);
        double pr = PRANDTL.require("prandtl", prandtl);
        double eighth = DARCY.require("darcy", darcy) / 8;
        return eighth * (re - 1000) * pr / (1 + 12.7 * Math.sqrt(eighth) * (Math.pow(pr, 2.0 / 3) - 1));
    }

    private static double smoothDarcy(double reynolds) {
        double root = 0.79 * Math.log(reynolds) - 1.64;
        return 1 / (root * root);
    }
}
