package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * How a flat window lies.
 *
 * @param tiltDeg angle from the horizontal in degrees: 0 looks straight up, 90 is a wall
 * @param azimuthDeg bearing it faces in degrees from north through east, 0 to 360; 180 is south
 */
public record Facing(double tiltDeg, double azimuthDeg) {

    /** Tilts accepted, in degrees from the horizontal. */
    public static final Allowed TILT = new Allowed(0, 90, "°");

    /** Bearings accepted, in degrees from north through east. */
    public static final Allowed AZIMUTH = new Allowed(0, 360, "°");

    /**
     * Checks both angles.
     *
     * @throws RefusedException where one is outside its range or not a number
     */
    public Facing {
        new FaultList()
                .check("tiltDeg", tiltDeg, TILT)
                .check("azimuthDeg", azimuthDeg, AZIMUTH)
                .refuseIfAny();
    }

    /**
     * Cosine of the angle between the sun and the window's normal: Duffie and Beckman equation 1.6.3.
     *
     * @param sun where the sun stands
     * @return below 0 where the sun is behind the window
     */
    public double cosIncidence(SunAngles sun) {
        double zenith = Math.toRadians(sun.zenithDeg());
        double tilt = Math.toRadians(tiltDeg);
        double turned = Math.toRadians(sun.azimuthDeg() - azimuthDeg);
        return Math.cos(zenith) * Math.cos(tilt) + Math.sin(zenith) * Math.sin(tilt) * Math.cos(turned);
    }

    /**
     * Beam on the window for each unit of beam on the horizontal: Duffie and Beckman equation 1.8.1.
     *
     * @param sun where the sun stands
     * @return 0 where the sun is down or behind the window
     */
    public double beamRatio(SunAngles sun) {
        return sun.cosZenith() > 0 ? Math.max(0, cosIncidence(sun)) / sun.cosZenith() : 0;
    }

    /** Share of what the window sees that is sky, 0.5 to 1. */
    public double skyShare() {
        return (1 + Math.cos(Math.toRadians(tiltDeg))) / 2;
    }

    /** Angle at which a beam passes the panes as the sky's light does, in degrees: equation 5.4.2. */
    public double skyAngleDeg() {
        return 59.7 - 0.1388 * tiltDeg + 0.001497 * tiltDeg * tiltDeg;
    }

    /** Angle at which a beam passes the panes as light from the ground does, in degrees: equation 5.4.1. */
    public double groundAngleDeg() {
        return 90 - 0.5788 * tiltDeg + 0.002693 * tiltDeg * tiltDeg;
    }
}
