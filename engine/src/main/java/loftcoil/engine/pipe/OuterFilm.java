package loftcoil.engine.pipe;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.gas.Air;
import loftcoil.engine.heat.ChurchillChu;
import loftcoil.engine.heat.GreyRadiation;
import loftcoil.engine.heat.RoundWall;

/**
 * Natural convection and radiation from the outside of a level pipe to still air and surfaces of the same temperature.
 *
 * @param diameterM outer diameter in m
 * @param emissivity emissivity of the surface
 */
record OuterFilm(double diameterM, double emissivity) {

    /** Copper gone dull; polished it is 0.05 and loses less. From memory: textbook tables give 0.5 and more for oxidised. */
    static final double DULL_COPPER = 0.5;

    /** Lagging or its cloth or plastic skin; from memory: ISO 12241 gives 0.94 for surfaces that are not metal. */
    static final double LAGGED = 0.94;

    /**
     * The air of a room is never still enough for convection to die with the last kelvin; this much of a difference is
     * always left. It keeps the loss smooth through equal temperatures and adds under 0.2 % from 10 K on.
     */
    private static final double STIRRING_K = 1;

    /** Resistance for a metre of pipe, K m/W. Air is taken at sea level: at 2000 m the film is 5 to 8 % weaker. */
    double kMPerW(double surfaceC, double aroundC) {
        return RoundWall.filmKMPerW(diameterM, convection(surfaceC, aroundC) + radiation(surfaceC, aroundC));
    }

    private double radiation(double surfaceC, double aroundC) {
        return GreyRadiation.filmWPerM2K(surfaceC, aroundC, emissivity);
    }

    private double convection(double surfaceC, double aroundC) {
        double meanC = (surfaceC + aroundC) / 2;
        double density = Air.densityKgPerM3(meanC, Constants.STANDARD_ATMOSPHERE_PA);
        double viscosity = Air.viscosityPaS(meanC);
        double prandtl = Air.prandtl(meanC);
        double difference = Math.hypot(surfaceC - aroundC, STIRRING_K);
        double kinematic = viscosity / density;
        double rayleigh = Constants.GRAVITY_M_PER_S2
                / (meanC + Constants.KELVIN_AT_ZERO_C)
                * difference
                * diameterM
                * diameterM
                * diameterM
                / (kinematic * kinematic)
                * prandtl;
        return ChurchillChu.horizontalCylinder(rayleigh, prandtl) * Air.conductivityWPerMK(meanC) / diameterM;
    }
}
