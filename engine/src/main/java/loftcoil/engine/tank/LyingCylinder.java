package loftcoil.engine.tank;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A round tank lying on its side, its ends flat, its axis level and along the panes.
 *
 * <p>Volume below a level h: the segment of a circle, r² acos((r − h)/r) − (r − h) √(2 r h − h²), times the length (plane
 * geometry). Domed ends are left out: a dome as deep as a tenth of the diameter holds about 3 % of a tank twice as long as
 * wide.
 *
 * @param volumeM3 volume to the brim in m³, 0.005 to 20
 * @param diameterM inner diameter in m, 0.1 to 5
 */
public record LyingCylinder(double volumeM3, double diameterM) implements TankShape {

    private static final double LEVEL_ACCURACY_M = 1e-9;

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where a size is outside its range or not a number
     */
    public LyingCylinder {
        VOLUME.require("volumeM3", volumeM3);
        HEIGHT.require("diameterM", diameterM);
    }

    /** Inner length in m. */
    public double lengthM() {
        return volumeM3 / endM2();
    }

    /** Area of one flat end in m². */
    public double endM2() {
        return Math.PI / 4 * diameterM * diameterM;
    }

    /** Area of the round wall without its ends in m². */
    public double roundM2() {
        return Math.PI * diameterM * lengthM();
    }

    @Override
    public double heightM() {
        return diameterM;
    }

    @Override
    public double footprintM2() {
        return diameterM * lengthM();
    }

    @Override
    public double perimeterM() {
        return 2 * (diameterM + lengthM());
    }

    @Override
    public double frontM() {
        return lengthM();
    }

    @Override
    public double standsOnM() {
        return 0;
    }

    @Override
    public double sideM2() {
        return roundM2() + 2 * endM2();
    }

    @Override
    public double lidM2() {
        return 0;
    }

    @Override
    public double volumeBelowM3(double levelM) {
        double level = Math.max(0, Math.min(diameterM, levelM));
        double radius = diameterM / 2;
        double under = radius - level;
        double chord = Math.sqrt(Math.max(0, level * (diameterM - level)));
        double segment = radius * radius * Math.acos(Math.max(-1, Math.min(1, under / radius))) - under * chord;
        return Math.max(0, segment) * lengthM();
    }

    @Override
    public double levelM(double volumeM3Below) {
        if (!(volumeM3Below > 0)) {
            return 0;
        }
        if (volumeM3Below >= volumeM3) {
            return diameterM;
        }
        return new BracketingNthOrderBrentSolver(1e-12, LEVEL_ACCURACY_M, 1e-15, 5)
                .solve(100, level -> volumeBelowM3(level) - volumeM3Below, 0, diameterM);
    }

    /** From any tilt its outline is the same: diameter by length. Behind it lies half the round wall. */
    @Override
    public SeenFace seenFrom(double tiltDeg) {
        return SeenFace.round(footprintM2(), roundM2() / 2, tiltDeg);
    }
}
