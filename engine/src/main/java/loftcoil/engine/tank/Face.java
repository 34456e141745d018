package loftcoil.engine.tank;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.gas.Air;
import loftcoil.engine.heat.ChurchillChu;
import loftcoil.engine.heat.GreyRadiation;

/**
 * How the film of still air on one outer face of a tank works: natural convection by the way the face looks, and radiation.
 *
 * <p>Wall: Churchill and Chu's vertical plate (a cylinder is as good as flat where D ≥ 35 H / Gr^¼, true of any tank thicker
 * than a bottle). Lid and base: Lloyd and Moran, with McAdams' constants, Incropera, 6th ed., equations 9.30 to 9.32, on area
 * over perimeter: 0.54 Ra^¼ and from Ra = 1e7 0.15 Ra^⅓ where warm air leaves freely, 0.27 Ra^¼ where it is held under the
 * face. All scatter by about 20 %.
 */
enum Face {
    WALL,
    /** The wall of a lying cylinder: Churchill and Chu's horizontal cylinder, on its diameter. */
    ROUND,
    LID,
    BASE;

    /** Lagging, paint and rust alike; from memory: ISO 12241 gives 0.94 for surfaces that are not metal. Blank metal is less. */
    static final double EMISSIVITY = 0.94;

    private static final double TURBULENT_FROM = 1e7;

    /** Air in a roof is never quite still: this much of a difference is always left, in K. It keeps the film above nothing. */
    private static final double STIRRING_K = 1;

    /**
     * Film coefficient of convection and radiation.
     *
     * @param lengthM height of a wall; outer diameter of a round one; area over perimeter of a lid or base
     * @return W/(m² K)
     */
    double filmWPerM2K(double lengthM, double surfaceC, double aroundC) {
        double meanC = (surfaceC + aroundC) / 2;
        double kinematic = Air.viscosityPaS(meanC) / Air.densityKgPerM3(meanC, Constants.STANDARD_ATMOSPHERE_PA);
        double difference = Math.hypot(surfaceC - aroundC, STIRRING_K);
        double rayleigh = Constants.GRAVITY_M_PER_S2
                / (meanC + Constants.KELVIN_AT_ZERO_C)
                * difference
                * Math.pow(lengthM, 3)
                / (kinematic * kinematic)
                * Air.prandtl(meanC);
        double nusselt = nusselt(rayleigh, Air.prandtl(meanC), surfaceC >= aroundC);
        return nusselt * Air.conductivityWPerMK(meanC) / lengthM
                + GreyRadiation.filmWPerM2K(surfaceC, aroundC, EMISSIVITY);
    }

    double nusselt(double rayleigh, double prandtl, boolean warmerThanAir) {
        if (this == WALL) {
            return ChurchillChu.verticalPlate(rayleigh, prandtl);
        }
        if (this == ROUND) {
            return ChurchillChu.horizontalCylinder(rayleigh, prandtl);
        }
        boolean free = (this == LID) == warmerThanAir;
        if (!free) {
            return 0.27 * Math.pow(rayleigh, 0.25);
        }
        return rayleigh < TURBULENT_FROM ? 0.54 * Math.pow(rayleigh, 0.25) : 0.15 * Math.cbrt(rayleigh);
    }
}
