package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Reflection where light passes from air into glass: Fresnel's equations and Snell's law, Duffie and Beckman equations
 * 5.1.1 to 5.1.4, written with cosines so that square-on light needs no case of its own.
 */
public final class Fresnel {

    private static final Allowed ANGLE = new Allowed(0, 90, "°");

    private Fresnel() {}

    /**
     * Angle of the light inside the glass.
     *
     * @param incidenceDeg angle from the normal outside, 0 to 90
     * @param refractiveIndex of the glass against air
     * @return degrees
     * @throws RefusedException where the angle is outside its range or not a number
     */
    public static double refractedDeg(double incidenceDeg, double refractiveIndex) {
        double sine = Math.sin(Math.toRadians(ANGLE.require("incidenceDeg", incidenceDeg)));
        return Math.toDegrees(Math.asin(sine / refractiveIndex));
    }

    /**
     * Reflectance of one surface for light polarised square to the plane of incidence.
     *
     * @param incidenceDeg angle from the normal outside, 0 to 90
     * @param refractiveIndex of the glass against air
     * @return share reflected, 0 to 1
     * @throws RefusedException where the angle is outside its range or not a number
     */
    public static double perpendicular(double incidenceDeg, double refractiveIndex) {
        double outside = Math.cos(Math.toRadians(incidenceDeg));
        double inside = refractiveIndex * Math.cos(Math.toRadians(refractedDeg(incidenceDeg, refractiveIndex)));
        return squareOfRatio(outside, inside);
    }

    /**
     * Reflectance of one surface for light polarised along the plane of incidence.
     *
     * @param incidenceDeg angle from the normal outside, 0 to 90
     * @param refractiveIndex of the glass against air
     * @return share reflected, 0 to 1
     * @throws RefusedException where the angle is outside its range or not a number
     */
    public static double parallel(double incidenceDeg, double refractiveIndex) {
        double outside = refractiveIndex * Math.cos(Math.toRadians(incidenceDeg));
        double inside = Math.cos(Math.toRadians(refractedDeg(incidenceDeg, refractiveIndex)));
        return squareOfRatio(outside, inside);
    }

    private static double squareOfRatio(double one, double other) {
        double ratio = (one - other) / (one + other);
        return ratio * ratio;
    }
}
