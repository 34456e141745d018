package loftcoil.engine.heat;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Natural convection on the outside of a body in still air or water, as mean Nusselt numbers.
 *
 * <p>Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 (horizontal cylinder) and 1323 (vertical plate);
 * Incropera, Fundamentals of Heat and Mass Transfer, 6th ed., equations 9.34 and 9.26. Properties are taken at the mean of
 * surface and surroundings. Measurements scatter by about 20 % around either.
 */
public final class ChurchillChu {

    /** The Rayleigh numbers accepted. */
    public static final Allowed RAYLEIGH = new Allowed(0, 1e12, "");

    private ChurchillChu() {}

    /**
     * Mean Nusselt number of a long horizontal cylinder, based on its diameter.
     *
     * @param rayleigh Rayleigh number on the diameter, 0 to 1e12
     * @param prandtl Prandtl number of the fluid, 0.001 to 10 000
     * @return a plain number, at least 0.36
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double horizontalCylinder(double rayleigh, double prandtl) {
        return square(0.60 + growth(rayleigh, prandtl, 0.559));
    }

    /**
     * Mean Nusselt number of a vertical plate, based on its height.
     *
     * @param rayleigh Rayleigh number on the height, 0 to 1e12
     * @param prandtl Prandtl number of the fluid, 0.001 to 10 000
     * @return a plain number, at least 0.68
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double verticalPlate(double rayleigh, double prandtl) {
        return square(0.825 + growth(rayleigh, prandtl, 0.492));
    }

    private static double growth(double rayleigh, double prandtl, double shape) {
        double ra = RAYLEIGH.require("rayleigh", rayleigh);
        double pr = Prandtl.ALLOWED.require("prandtl", prandtl);
        return 0.387 * Math.pow(ra, 1.0 / 6) / Math.pow(1 + Math.pow(shape / pr, 9.0 / 16), 8.0 / 27);
    }

    private static double square(double x) {
        return x * x;
    }
}
