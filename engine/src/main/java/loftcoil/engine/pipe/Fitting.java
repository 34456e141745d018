package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * A fitting by the two-K method: the pressure drop is K ρv²/2, with K = K1/Re + K∞ (1 + 1/D), D being the bore in inches.
 * Hooper, Chemical Engineering, 24 August 1981, p. 96. Entrance, exit and unions have no size term: K = K1/Re + K∞.
 *
 * <p>Handbooks differ from each other by up to a factor of two for the same fitting; in 3/4 inch and fast flow this rule lies between
 * them or above. Below a Reynolds number of about 500 measurements are few.
 *
 * @param key how it is named in a design, such as {@code elbow90}
 * @param words what it is, in plain words
 * @param laminarK1 K1, 0 or more
 * @param turbulentK K∞, 0 or more
 * @param sized whether K∞ is multiplied by 1 + 1/D
 * @param source where the two constants come from
 */
public record Fitting(String key, String words, double laminarK1, double turbulentK, boolean sized, String source) {

    /** The bores accepted, in m. */
    public static final Allowed BORE = new Allowed(1e-3, 0.5, "m");

    private static final Allowed CONSTANT = new Allowed(0, 1e5, "");
    private static final double INCH_M = 0.0254;

    /**
     * Checks the constants.
     *
     * @throws RefusedException where a constant is negative or not a number
     */
    public Fitting {
        CONSTANT.require("laminarK1", laminarK1);
        CONSTANT.require("turbulentK", turbulentK);
    }

    /**
     * Loss coefficient K.
     *
     * @param reynolds Reynolds number on the bore, above 0 (1e-9) to 1e8
     * @param boreM bore of the tube in m, 0.001 to 0.5
     * @return a plain number, in velocity heads
     * @throws RefusedException where either is outside its range or not a number
     */
    public double k(double reynolds, double boreM) {
        new Allowed(1e-9, 1e8, "").require("reynolds", reynolds);
        return kTimesReynolds(reynolds, boreM) / reynolds;
    }

    /**
     * Loss coefficient times the Reynolds number, which stays finite as flow stops.
     *
     * @param reynolds Reynolds number on the bore, 0 to 1e8
     * @param boreM bore of the tube in m, 0.001 to 0.5
     * @return a plain number
     * @throws RefusedException where either is outside its range or not a number
     */
    public double kTimesReynolds(double reynolds, double boreM) {
        double re = Friction.REYNOLDS.require("reynolds", reynolds);
        return laminarK1 + turbulentKAt(boreM) * re;
    }

    /**
     * How much straight tube of the same bore holds the water back as much: K D/f, with the friction factor f of a drawn tube.
     *
     * @param reynolds Reynolds number on the bore, above 0 (1e-9) to 1e8
     * @param boreM bore of the tube in m, 0.001 to 0.5
     * @return length in m
     * @throws RefusedException where either is outside its range or not a number
     */
    public double asStraightM(double reynolds, double boreM) {
        double kTimesReynolds = k(reynolds, boreM) * reynolds;
        return kTimesReynolds * boreM / Friction.darcyTimesReynolds(reynolds, Friction.DRAWN_TUBE_ROUGHNESS_M / boreM);
    }

    /**
     * The part of K that does not depend on the flow, so that a solver can sum fittings once.
     *
     * @param boreM bore of the tube in m, 0.001 to 0.5
     * @return a plain number
     * @throws RefusedException where the bore is outside its range or not a number
     */
    public double turbulentKAt(double boreM) {
        double bore = BORE.require("boreM", boreM);
        return sized ? turbulentK * (1 + INCH_M / bore) : turbulentK;
    }
}
