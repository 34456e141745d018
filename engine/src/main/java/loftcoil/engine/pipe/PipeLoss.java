package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.heat.InsideFilm;
import loftcoil.engine.heat.RoundWall;
import loftcoil.engine.water.Water;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Heat a bare or lagged pipe loses to still air around it: film inside, lagging, film outside by natural convection and
 * radiation, in series; Incropera, 6th ed., section 3.3, and the method of ISO 12241:2008.
 *
 * <p>The film inside is that of slow laminar flow, Nusselt number 3.66. Faster flow loses more, at most by what that film holds
 * back: an eighth for a bare tube of 28 mm or less, a twentieth for a lagged one. The metal itself holds
 * back less than 0.1 % (copper) to 1 % (stainless) and is left out, and so are brackets and gaps in the lagging, which in practice add a tenth or more (common
 * practice, no source). The pipe is taken as level.
 */
public final class PipeLoss {

    /** The temperatures of the surroundings accepted, in °C. */
    public static final Allowed AROUND = new Allowed(-40, 250, "°C");

    private static final double SURFACE_SHARE_ACCURACY = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    private PipeLoss() {}

    /**
     * Heat lost for each metre of pipe and each kelvin by which the water is warmer than the surroundings. It stays finite
     * and smooth where both are equal, and counts the gain where the water is the colder.
     *
     * @param tube the tube
     * @param lagging the lagging, {@link Lagging#NONE} for a bare pipe
     * @param waterC temperature of the water in °C, 0 to 110
     * @param aroundC temperature of the air and of the surfaces around in °C, -40 to 250
     * @return W/(m K), above zero
     * @throws RefusedException where a temperature is outside its range or not a number, or the lagging is unknown
     */
    public static double wPerMK(Tube tube, Lagging lagging, double waterC, double aroundC) {
        Water.TEMPERATURE.require("waterC", waterC);
        AROUND.require("aroundC", aroundC);
        double nusselt = InsideFilm.Wall.EVEN_TEMPERATURE.laminarNusselt();
        double insideFilm = nusselt * Water.conductivityWPerMK(waterC) / tube.boreM();
        double inside = RoundWall.filmKMPerW(tube.boreM(), insideFilm);
        return lagging.isNone()
                ? bare(tube, inside, waterC, aroundC)
                : lagged(tube, lagging, inside, new Span(waterC, aroundC));
    }

    private static double bare(Tube tube, double inside, double waterC, double aroundC) {
        OuterFilm film = new OuterFilm(tube.outerM(), tube.metal().emissivity());
        return conductance(share -> inside, film, new Span(waterC, aroundC));
    }

    private static double lagged(Tube tube, Lagging lagging, double inside, Span span) {
        LaggingMaterial material = LaggingTable.require("lagging.material", lagging.material());
        double outerM = tube.outerM() + 2 * lagging.thicknessM();
        OuterFilm film = new OuterFilm(outerM, OuterFilm.LAGGED);
        Inner inner = share -> {
            double meanC = (span.waterC() + span.at(share)) / 2;
            return inside + RoundWall.layerKMPerW(tube.outerM(), outerM, material.conductivityWPerMK(meanC));
        };
        return conductance(inner, film, span);
    }

    /**
     * Finds the share of the whole temperature difference that the outer surface keeps above the surroundings. Working with
     * the share instead of a temperature leaves an answer where there is no difference at all.
     */
    private static double conductance(Inner inner, OuterFilm film, Span span) {
        double share = new BrentSolver(SURFACE_SHARE_ACCURACY, SURFACE_SHARE_ACCURACY)
                .solve(
                        MOST_EVALUATIONS,
                        s -> {
                            double outer = film.kMPerW(span.at(s), span.aroundC());
                            return s - outer / (inner.kMPerW(s) + outer);
                        },
                        0,
                        1);
        return 1 / (inner.kMPerW(share) + film.kMPerW(span.at(share), span.aroundC()));
    }

    /** Resistance from the water to the outer surface, which depends a little on how warm that surface is. */
    @FunctionalInterface
    private interface Inner {
        double kMPerW(double share);
    }

    private record Span(double waterC, double aroundC) {
        double at(double share) {
            return aroundC + share * (waterC - aroundC);
        }
    }
}
