package loftcoil.engine.heat;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * Forced flow across a single round tube, as a mean Nusselt number on its outer diameter.
 *
 * <p>Churchill and Bernstein, J. Heat Transfer 99 (1977) 300; Incropera, 6th ed., equation 7.54. Properties at the mean of
 * surface and stream. For a product of Reynolds and Prandtl number of at least 0.2; measurements scatter by about 20 %.
 */
public final class ChurchillBernstein {

    /** The Reynolds numbers accepted. */
    public static final Allowed REYNOLDS = new Allowed(1e-3, 1e7, "");

    private static final double LEAST_PECLET = 0.2;

    private ChurchillBernstein() {}

    /**
     * Mean Nusselt number.
     *
     * @param reynolds Reynolds number on the outer diameter, 0.001 to 1e7
     * @param prandtl Prandtl number of the stream, 0.001 to 10 000
     * @return a plain number, above 0.3
     * @throws RefusedException where either is outside its range or not a number, or where their product is below 0.2
     */
    public static double nusselt(double reynolds, double prandtl) {
        double re = REYNOLDS.require("reynolds", reynolds);
        double pr = Prandtl.ALLOWED.require("prandtl", prandtl);
        if (re * pr < LEAST_PECLET) {
            throw new RefusedException(List.of(new Fault(
                    "reynolds",
                    Numeral.typed(re),
                    "at least " + LEAST_PECLET / pr,
                    "the stream is too slow for this correlation")));
        }
        double laminar = 0.62 * Math.sqrt(re) * Math.cbrt(pr) / Math.pow(1 + Math.pow(0.4 / pr, 2.0 / 3), 0.25);
        return 0.3 + laminar * Math.pow(1 + Math.pow(re / 282_000, 0.625), 0.8);
    }
}
