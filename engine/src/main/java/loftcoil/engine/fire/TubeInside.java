package loftcoil.engine.fire;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.heat.ChurchillChu;
import loftcoil.engine.heat.InsideFilm;
import loftcoil.engine.heat.RoundWall;
import loftcoil.engine.pipe.WoundFilm;
import loftcoil.engine.water.Water;

/**
 * From the water to the outer surface of a coil that takes up a given heat: warmth of the water, film inside, metal, soot.
 *
 * <p>Film: forced flow by {@link InsideFilm} with even flux, and warm water rising along the wall by Churchill and Chu's
 * horizontal cylinder on the bore, put together as the cube root of the sum of cubes (Churchill, AIChE J. 23 (1977) 10).
 * Using the cylinder's outside correlation inside a tube is a rough floor, common practice, no source. Bubbles at the wall,
 * which would carry more, are left out.
 */
final class TubeInside {

    /** Loose soot and fly ash, W/(m K); 0.07 to 0.15, common practice, no source. */
    static final double SOOT_W_PER_M_K = 0.1;

    /**
     * The film counts as at least this warm where it asks how far water expands: at 4 °C water does not, while beside a hot wall
     * some of it does.
     */
    private static final double COLDEST_FILM_C = 10;

    private static final int MOST_ROUNDS = 60;

    private final FireCoil coil;
    private final WaterFlow water;

    TubeInside(FireCoil coil, WaterFlow water) {
        this.coil = coil;
        this.water = water;
    }

    /** Temperature of the water leaving the coil, °C, as if it could not boil. */
    double outC(double heatW) {
        return water.inletC() + heatW / (water.flowKgPerS() * Water.specificHeatJPerKgK(water.inletC()));
    }

    /**
     * Mean temperature of the metal at the water, °C. Past 110 °C the water boils and grows no hotter: its mean is held
     * there.
     */
    double innerWallC(double heatW) {
        double meanC = Math.min((water.inletC() + outC(heatW)) / 2, Water.TEMPERATURE.high());
        double fluxWPerM2 = heatW / (Math.PI * coil.tube().boreM() * coil.lengthM());
        return meanC + rise(meanC, fluxWPerM2);
    }

    /** Mean temperature of the outer surface, on the soot, °C. */
    double surfaceC(double heatW) {
        double conductivity = coil.tube().metal().conductivityWPerMK();
        double metal = RoundWall.layerKMPerW(coil.tube().boreM(), coil.tube().outerM(), conductivity);
        double soot = RoundWall.layerKMPerW(coil.tube().outerM(), coil.sootyM(), SOOT_W_PER_M_K);
        return innerWallC(heatW) + heatW / coil.lengthM() * (metal + soot);
    }

    /** Kelvin between wall and water; the film depends on them by a root, so that repeating it settles. */
    private double rise(double meanC, double fluxWPerM2) {
        if (fluxWPerM2 <= 0) {
            return 0;
        }
        double bore = coil.tube().boreM();
        double prandtl = Water.prandtl(meanC);
        double conductance = Water.conductivityWPerMK(meanC) / bore;
        double reynolds = water.flowKgPerS() * bore / (coil.tube().areaM2() * Water.viscosityPaS(meanC));
        double forced = forcedNusselt(reynolds, prandtl) * conductance;
        double perExpansion = rayleighPerExpansion(meanC, prandtl);
        double rise = fluxWPerM2 / forced;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double filmC = Math.min(Math.max(meanC + rise / 2, COLDEST_FILM_C), Water.TEMPERATURE.high());
            double expansion = Water.expansionPerK(filmC);
            double rayleigh = Math.min(perExpansion * expansion * rise, ChurchillChu.RAYLEIGH.high());
            double natural = ChurchillChu.horizontalCylinder(rayleigh, prandtl) * conductance;
            double next = fluxWPerM2 / Math.cbrt(forced * forced * forced + natural * natural * natural);
            if (Math.abs(next - rise) < 1e-11 * rise) {
                return next;
            }
            rise = next;
        }
        return rise;
    }

    private double forcedNusselt(double reynolds, double prandtl) {
        return coil.windingM() > 0
                ? WoundFilm.nusselt(reynolds, prandtl, coil.tube().boreM() / coil.windingM())
                : InsideFilm.nusselt(reynolds, prandtl, InsideFilm.Wall.EVEN_FLUX);
    }

    private double rayleighPerExpansion(double meanC, double prandtl) {
        double bore = coil.tube().boreM();
        double viscosity = Water.viscosityPaS(meanC) / Water.densityKgPerM3(meanC);
        return Constants.GRAVITY_M_PER_S2 * bore * bore * bore * prandtl / (viscosity * viscosity);
    }
}
