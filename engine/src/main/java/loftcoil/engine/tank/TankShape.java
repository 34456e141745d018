package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;

/** The inside of an open-vented tank with upright walls: the same section from the base to the brim. */
public sealed interface TankShape permits UprightCylinder, Box {

    /** The volumes accepted, in m³: a bucket to a small cistern. */
    Allowed VOLUME = new Allowed(0.005, 20, "m³");

    /** The heights accepted, in m. */
    Allowed HEIGHT = new Allowed(0.1, 5, "m");

    /** Height from base to brim in m. */
    double heightM();

    /** Area of the section, which is also that of the base and of the lid, in m². */
    double footprintM2();

    /** Length once around the wall, in m. */
    double perimeterM();

    /** Volume to the brim in m³. */
    default double volumeM3() {
        return footprintM2() * heightM();
    }

    /** Area of the upright wall in m². */
    default double sideM2() {
        return perimeterM() * heightM();
    }

    /** Area of wall, base and lid together in m². */
    default double surfaceM2() {
        return sideM2() + 2 * footprintM2();
    }
}
