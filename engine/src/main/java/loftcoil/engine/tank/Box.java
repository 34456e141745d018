package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;

/**
 * A tank with four flat walls.
 *
 * @param lengthM inner length along the panes in m, 0.05 to 10
 * @param widthM inner width, from front to back, in m, 0.05 to 10
 * @param heightM height from base to brim in m, 0.1 to 5
 */
public record Box(double lengthM, double widthM, double heightM) implements TankShape {

    private static final Allowed SIDE = new Allowed(0.05, 10, "m");

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where a size or the volume is outside its range or not a number
     */
    public Box {
        SIDE.require("lengthM", lengthM);
        SIDE.require("widthM", widthM);
        HEIGHT.require("heightM", heightM);
        VOLUME.require("volumeM3", lengthM * widthM * heightM);
    }

    /**
     * A box on a square base.
     *
     * @param volumeM3 volume to the brim in m³, 0.005 to 20
     * @param heightM height from base to brim in m, 0.1 to 5
     * @throws loftcoil.engine.fault.RefusedException where a size is outside its range or not a number
     */
    public static Box square(double volumeM3, double heightM) {
        double side = Math.sqrt(VOLUME.require("volumeM3", volumeM3) / HEIGHT.require("heightM", heightM));
        return new Box(side, side, heightM);
    }

    @Override
    public double footprintM2() {
        return lengthM * widthM;
    }

    @Override
    public double perimeterM() {
        return 2 * (lengthM + widthM);
    }

    @Override
    public double frontM() {
        return lengthM;
    }

    @Override
    public double standsOnM() {
        return Math.min(lengthM, widthM);
    }

    @Override
    public SeenFace seenFrom(double tiltDeg) {
        double front = lengthM * heightM;
        return SeenFace.upright(front, front, footprintM2(), tiltDeg);
    }
}
