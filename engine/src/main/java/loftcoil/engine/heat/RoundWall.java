package loftcoil.engine.heat;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * Steady heat through the layers of a round pipe, as resistances to heat of a metre of pipe in K m/W, which add up from
 * the water to the air. Incropera, 6th ed., section 3.3; ISO 12241:2008 uses the same forms.
 */
public final class RoundWall {

    /** The diameters and radii accepted, in m. */
    public static final Allowed SIZE = new Allowed(1e-4, 10, "m");

    /** The thermal conductivities accepted, in W/(m K): still air to silver. */
    public static final Allowed CONDUCTIVITY = new Allowed(1e-3, 500, "W/(m K)");

    /** The film coefficients accepted, in W/(m² K). */
    public static final Allowed FILM = new Allowed(1e-3, 1e6, "W/(m² K)");

    private RoundWall() {}

    /**
     * Resistance of a solid layer.
     *
     * @param innerDiameterM inner diameter in m
     * @param outerDiameterM outer diameter in m, at least the inner
     * @param conductivityWPerMK thermal conductivity in W/(m K)
     * @return K m/W; zero where the layer has no thickness
     * @throws RefusedException where a value is outside its range or not a number, or the layer is inside out
     */
    public static double layerKMPerW(double innerDiameterM, double outerDiameterM, double conductivityWPerMK) {
        double inner = SIZE.require("innerDiameterM", innerDiameterM);
        double outer = SIZE.require("outerDiameterM", outerDiameterM);
        double conductivity = CONDUCTIVITY.require("conductivityWPerMK", conductivityWPerMK);
        if (outer < inner) {
            throw new RefusedException(List.of(new Fault(
                    "outerDiameterM",
                    Numeral.typed(outer),
                    "at least " + inner + " m",
                    "the layer would be inside out")));
        }
        return Math.log(outer / inner) / (2 * Math.PI * conductivity);
    }

    /**
     * Resistance of a film of water or air on a round surface.
     *
     * @param diameterM diameter of the surface in m
     * @param filmWPerM2K film coefficient in W/(m² K)
     * @return K m/W
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double filmKMPerW(double diameterM, double filmWPerM2K) {
        return 1 / (Math.PI * SIZE.require("diameterM", diameterM) * FILM.require("filmWPerM2K", filmWPerM2K));
    }

    /**
     * The outer radius at which lagging loses most heat: below it a thicker layer loses more, above it less.
     *
     * @param conductivityWPerMK thermal conductivity of the lagging in W/(m K)
     * @param filmWPerM2K film coefficient outside in W/(m² K), taken as constant
     * @return m, from the axis
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double criticalRadiusM(double conductivityWPerMK, double filmWPerM2K) {
        return CONDUCTIVITY.require("conductivityWPerMK", conductivityWPerMK)
                / FILM.require("filmWPerM2K", filmWPerM2K);
    }
}
