package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;

/**
 * Where fire and coil are.
 *
 * @param wallM2 inner surface of the firebox in m², 0.1 to 10
 * @param passageM2 free cross-section the gas has where it passes the coil, in m², 0.002 to 1
 * @param meanBeamM thickness of the glowing gas as its mean beam length: 3.6 times volume over surface, in m, 0.02 to 2
 * @param flameEmissivity emissivity that soot adds to a yellow flame, 0 to 0.9
 */
public record FireboxSize(double wallM2, double passageM2, double meanBeamM, double flameEmissivity) {

    private static final Allowed WALL = new Allowed(0.1, 10, "m²");
    /** The passages accepted, in m². */
    public static final Allowed PASSAGE = new Allowed(0.002, 1, "m²");

    private static final Allowed BEAM = new Allowed(0.02, 2, "m");
    /** The emissivities of a flame accepted. */
    public static final Allowed EMISSIVITY = new Allowed(0, 0.9, "");

    /**
     * A room heater's firebox of 0.3 by 0.35 m and 0.45 m high, the gas narrowed to a fifth of its floor where it passes the
     * coil, a yellow flame. Common practice, no source.
     */
    public static final FireboxSize COMMON = new FireboxSize(0.8, 0.02, 0.2, 0.2);

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public FireboxSize {
        WALL.require("wallM2", wallM2);
        PASSAGE.require("passageM2", passageM2);
        BEAM.require("meanBeamM", meanBeamM);
        EMISSIVITY.require("flameEmissivity", flameEmissivity);
    }

    /** The same with another cross-section for the gas, m². */
    public FireboxSize withPassageM2(double newPassageM2) {
        return new FireboxSize(wallM2, newPassageM2, meanBeamM, flameEmissivity);
    }

    /** The same with another emissivity of the flame. */
    public FireboxSize withFlameEmissivity(double newFlameEmissivity) {
        return new FireboxSize(wallM2, passageM2, meanBeamM, newFlameEmissivity);
    }
}
