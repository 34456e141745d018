package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.pipe.Tube;

/**
 * A tube in the fire.
 *
 * @param tube the tube
 * @param lengthM length of tube in the fire in m, 0 to 50
 * @param place where it sits
 * @param sootM thickness of the layer of soot and ash on it in m, 0 to 0.01
 * @param windingM diameter of the winding, middle of tube to middle, m; 0 where it is not wound
 */
public record FireCoil(Tube tube, double lengthM, CoilPlace place, double sootM, double windingM) {

    /** The lengths accepted, in m. */
    public static final Allowed LENGTH = new Allowed(0, 50, "m");

    /** The layers of soot accepted, in m. */
    public static final Allowed SOOT = new Allowed(0, 0.01, "m");

    /** Soot on a coil in use; 0.2 mm after sweeping, 1.5 mm neglected. Common practice, no source. */
    public static final double COMMON_SOOT_M = 0.0005;

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public FireCoil {
        LENGTH.require("lengthM", lengthM);
        SOOT.require("sootM", sootM);
    }

    /** A coil that is not wound. */
    public FireCoil(Tube tube, double lengthM, CoilPlace place, double sootM) {
        this(tube, lengthM, place, sootM, 0);
    }

    /** The same coil wound, m. */
    public FireCoil withWindingM(double newWindingM) {
        return new FireCoil(tube, lengthM, place, sootM, newWindingM);
    }

    /** A coil free in the flame with common soot on it. */
    public static FireCoil common(Tube tube, double lengthM) {
        return new FireCoil(tube, lengthM, CoilPlace.FLAME_PATH, COMMON_SOOT_M);
    }

    /** The same coil with another layer of soot, m. */
    public FireCoil withSootM(double newSootM) {
        return new FireCoil(tube, lengthM, place, newSootM, windingM);
    }

    /** The same coil with another length, m. */
    public FireCoil withLengthM(double newLengthM) {
        return new FireCoil(tube, newLengthM, place, sootM, windingM);
    }

    /** Outer diameter over the soot, m. */
    double sootyM() {
        return tube.outerM() + 2 * sootM;
    }

    /** Outer surface over the soot, m². */
    double surfaceM2() {
        return Math.PI * sootyM() * lengthM;
    }
}
