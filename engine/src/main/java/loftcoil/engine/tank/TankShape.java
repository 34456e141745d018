package loftcoil.engine.tank;

import loftcoil.engine.fault.Allowed;

/** The inside of an open-vented tank. Heights are above its lowest point. */
public sealed interface TankShape permits UprightCylinder, LyingCylinder, Box {

    /** The volumes accepted, in m³: a bucket to a small cistern. */
    Allowed VOLUME = new Allowed(0.005, 20, "m³");

    /** The heights accepted, in m. */
    Allowed HEIGHT = new Allowed(0.1, 5, "m");

    /** Height from the lowest point to the brim in m. */
    double heightM();

    /** Area of the shadow it would cast straight down, which is the base of a tank with upright walls, in m². */
    double footprintM2();

    /** Length once around the footprint, in m. */
    double perimeterM();

    /** Width as seen from the panes, in m. */
    double frontM();

    /** Least width of what it stands on, in m: over half of this it falls; 0 where it rolls. */
    double standsOnM();

    /** Area of all its wall, between base and lid where it has these, in m²; of upright walls where a shape does not say else. */
    default double sideM2() {
        return perimeterM() * heightM();
    }

    /** Area of the lid, and of the base, in m²; 0 where the wall goes all round. */
    default double lidM2() {
        return footprintM2();
    }

    /**
     * Volume below a level.
     *
     * @param levelM above the lowest point in m, 0 to {@link #heightM}; levels outside count as the nearer end
     * @return m³
     */
    default double volumeBelowM3(double levelM) {
        return footprintM2() * Math.max(0, Math.min(heightM(), levelM));
    }

    /**
     * The part of it that panes look at: its outline as the sun sees it that shines straight through them.
     *
     * @param tiltDeg tilt of the panes from the level, degrees; 0 to 90
     */
    SeenFace seenFrom(double tiltDeg);

    /** Volume to the brim in m³. */
    default double volumeM3() {
        return footprintM2() * heightM();
    }

    /** Area of wall, base and lid together in m². */
    default double surfaceM2() {
        return sideM2() + 2 * lidM2();
    }

    /**
     * Level of so much water: {@link #volumeBelowM3} turned round.
     *
     * @param volumeM3 0 to {@link #volumeM3}; volumes outside count as the nearer end
     * @return m above the lowest point
     */
    default double levelM(double volumeM3) {
        return Math.min(heightM(), Math.max(0, volumeM3 / footprintM2()));
    }
}
