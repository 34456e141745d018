package loftcoil.engine.tank;

/**
 * A round tank standing upright.
 *
 * @param volumeM3 volume to the brim in m³, 0.005 to 20
 * @param heightM height from base to brim in m, 0.1 to 5
 */
public record UprightCylinder(double volumeM3, double heightM) implements TankShape {

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where a size is outside its range or not a number
     */
    public UprightCylinder {
        VOLUME.require("volumeM3", volumeM3);
        HEIGHT.require("heightM", heightM);
    }

    /** Inner diameter in m. */
    public double diameterM() {
        return Math.sqrt(4 * footprintM2() / Math.PI);
    }

    @Override
    public double footprintM2() {
        return volumeM3 / heightM;
    }

    @Override
    public double perimeterM() {
        return Math.PI * diameterM();
    }

    @Override
    public double frontM() {
        return diameterM();
    }

    @Override
    public double standsOnM() {
        return diameterM();
    }

    /** Its outline is a rectangle, diameter by height, and a lid; behind the first lies half the wall. */
    @Override
    public SeenFace seenFrom(double tiltDeg) {
        return SeenFace.upright(diameterM() * heightM, sideM2() / 2, lidM2(), tiltDeg);
    }
}
