package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.LaggingTable;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What a tank loses standing still, for each kelvin between water and surroundings.
 *
 * <p>Forms of ISO 12241:2008: a round wall ln(D₂/D₁)/(2πλH) + 1/(h π D₂ H), flat faces d/(λA) + 1/(hA), λ at the mean temperature
 * of the layer, h by {@link Face} at the surface temperature that balances. Left out: the film of water inside and the wall of
 * the tank (under 1 % lagged, about 3 % bare, both to the safe side), and pipes, ports and bearers, which lead heat through
 * the lagging: {@link CoatedTank} adds them by published figures. The round wall of a lying cylinder is reckoned as that of an
 * upright one as high as it is long, its film as that of a horizontal cylinder; its flat ends count to the wall.
 *
 * @param sideWPerK through the wall, W/K
 * @param topWPerK through the lid, W/K; 0 of a lying cylinder
 * @param bottomWPerK through the base, W/K; 0 of a lying cylinder
 */
public record TankLoss(double sideWPerK, double topWPerK, double bottomWPerK) {

    private static final Allowed CONDUCTANCE = new Allowed(0, 1e4, "W/K");

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is negative or not a number
     */
    public TankLoss {
        CONDUCTANCE.require("sideWPerK", sideWPerK);
        CONDUCTANCE.require("topWPerK", topWPerK);
        CONDUCTANCE.require("bottomWPerK", bottomWPerK);
    }

    /**
     * The loss of a full tank at given temperatures. Lagged, it changes little with them; bare, by a quarter over 40 K.
     *
     * @param shape the inside of the tank
     * @param lagging lagging of its faces
     * @param at temperatures of water and surroundings
     * @throws RefusedException where a lagging material is not in the table
     */
    public static TankLoss of(TankShape shape, TankLagging lagging, Standing at) {
        if (shape instanceof LyingCylinder lying) {
            return new TankLoss(lyingWPerK(lying, lagging.side(), at), 0, 0);
        }
        double flatM = shape.footprintM2() / shape.perimeterM();
        double side = shape instanceof UprightCylinder round
                ? faceWPerK(Face.WALL, roundWall(round.diameterM(), round.heightM(), lagging.side()), at)
                : faceWPerK(Face.WALL, flat("side", lagging.side(), shape.sideM2(), shape.heightM()), at);
        double top = faceWPerK(Face.LID, flat("top", lagging.top(), shape.footprintM2(), flatM), at);
        double bottom = faceWPerK(Face.BASE, flat("bottom", lagging.bottom(), shape.footprintM2(), flatM), at);
        return new TankLoss(side, top, bottom);
    }

    /** All faces together, W/K. */
    public double totalWPerK() {
        return sideWPerK + topWPerK + bottomWPerK;
    }

    /**
     * Heat lost with the whole tank at one temperature.
     *
     * @param at temperatures of water and surroundings
     * @return W, negative where the surroundings are warmer
     */
    public double watts(Standing at) {
        return totalWPerK() * (at.waterC() - at.aroundC());
    }

    /** A face: its lagging, the resistance of that times its conductivity (1/m), the outer area and the length of its film. */
    private record Wrap(String path, Lagging lagging, double shapePerM, double outerM2, double filmLengthM) {}

    private static double lyingWPerK(LyingCylinder lying, Lagging lagging, Standing at) {
        Wrap upright = roundWall(lying.diameterM(), lying.lengthM(), lagging);
        Wrap round = new Wrap(
                "side", lagging, upright.shapePerM(), upright.outerM2(), lying.diameterM() + 2 * lagging.thicknessM());
        return faceWPerK(Face.ROUND, round, at)
                + faceWPerK(Face.WALL, flat("side", lagging, 2 * lying.endM2(), lying.diameterM()), at);
    }

    private static Wrap roundWall(double innerM, double longM, Lagging lagging) {
        double outer = innerM + 2 * lagging.thicknessM();
        double perM = Math.log(outer / innerM) / (2 * Math.PI * longM);
        return new Wrap("side", lagging, perM, Math.PI * outer * longM, longM);
    }

    private static Wrap flat(String path, Lagging lagging, double areaM2, double filmLengthM) {
        return new Wrap(path, lagging, lagging.thicknessM() / areaM2, areaM2, filmLengthM);
    }

    private static double faceWPerK(Face face, Wrap wrap, Standing at) {
        if (wrap.lagging().isNone()) {
            return face.filmWPerM2K(wrap.filmLengthM(), at.waterC(), at.aroundC()) * wrap.outerM2();
        }
        var material =
                LaggingTable.require(wrap.path() + ".material", wrap.lagging().material());
        UnivariateFunction imbalance = surfaceC ->
                material.conductivityWPerMK((at.waterC() + surfaceC) / 2) / wrap.shapePerM() * (at.waterC() - surfaceC)
                        - outside(face, wrap, surfaceC, at) * (surfaceC - at.aroundC());
        // The surface lies between water and surroundings; where these are equal there is nothing to balance.
        double surfaceC = at.aroundC();
        if (at.waterC() != at.aroundC()) {
            double low = Math.min(at.waterC(), at.aroundC());
            double high = Math.max(at.waterC(), at.aroundC());
            surfaceC = new BracketingNthOrderBrentSolver(1e-12, 1e-9, 1e-12, 5).solve(100, imbalance, low, high);
        }
        double conductivity = material.conductivityWPerMK((at.waterC() + surfaceC) / 2);
        return 1 / (wrap.shapePerM() / conductivity + 1 / outside(face, wrap, surfaceC, at));
    }

    private static double outside(Face face, Wrap wrap, double surfaceC, Standing at) {
        return face.filmWPerM2K(wrap.filmLengthM(), surfaceC, at.aroundC()) * wrap.outerM2();
    }
}
