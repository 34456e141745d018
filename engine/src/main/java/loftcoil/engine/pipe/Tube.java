package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;

/**
 * A round tube by its nominal dimensions and what it is made of.
 *
 * @param name how it is named in a design, such as {@code EN1057 22x0.9}
 * @param outerM outer diameter in m, 0.002 to 0.5
 * @param wallM thickness of the wall in m, at least 0.0001 and less than half the outer diameter
 * @param metal what it is made of
 */
public record Tube(String name, double outerM, double wallM, TubeMetal metal) {

    /** The outer diameters accepted, in m. */
    public static final Allowed OUTER = new Allowed(0.002, 0.5, "m");

    private static final double LEAST_WALL_M = 1e-4;
    private static final double LEAST_BORE_M = 1e-3;

    /**
     * Checks the dimensions.
     *
     * @throws loftcoil.engine.fault.RefusedException where a dimension is outside its range or not a number
     */
    public Tube {
        OUTER.require("outerM", outerM);
        // Rounded to a tenth of a micrometre, so that a refusal does not show the last digits of a double.
        double mostM = Math.rint((outerM - LEAST_BORE_M) / 2 * 1e7) / 1e7;
        new Allowed(LEAST_WALL_M, mostM, "m").require("wallM", wallM);
    }

    /** A copper tube. */
    public Tube(String name, double outerM, double wallM) {
        this(name, outerM, wallM, TubeMetal.COPPER);
    }

    /** Inner diameter in m. */
    public double boreM() {
        return outerM - 2 * wallM;
    }

    /** Inner cross-section in m². */
    public double areaM2() {
        return Math.PI / 4 * boreM() * boreM();
    }

    /** Water held by a metre of tube, in m³/m; the same number as {@link #areaM2}. */
    public double volumeM3PerM() {
        return areaM2();
    }

    /** Mass of the metal of a metre of it, kg/m. */
    public double metalKgPerM() {
        return metal.kgPerM3() * Math.PI * (outerM - wallM) * wallM;
    }
}
