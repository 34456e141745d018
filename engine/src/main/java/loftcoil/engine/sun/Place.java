package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.Atmosphere;

/**
 * Where the window stands and what its clock shows.
 *
 * @param latitudeDeg latitude in degrees, north positive, -90 to 90
 * @param longitudeDeg longitude in degrees, east positive, -180 to 180
 * @param altitudeM height above sea level in m, -500 to 5000; sets the pressure of the air between the panes
 * @param utcOffsetH what the clock is ahead of universal time in hours, all year (no summer time), -14 to 14
 */
public record Place(double latitudeDeg, double longitudeDeg, double altitudeM, double utcOffsetH) {

    /** Latitudes accepted, in degrees, north positive. */
    public static final Allowed LATITUDE = new Allowed(-90, 90, "°");

    /** Longitudes accepted, in degrees, east positive. */
    public static final Allowed LONGITUDE = new Allowed(-180, 180, "°");

    /** Clock offsets from universal time accepted, in hours. */
    public static final Allowed UTC_OFFSET = new Allowed(-14, 14, "h");

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public Place {
        new FaultList()
                .check("latitudeDeg", latitudeDeg, LATITUDE)
                .check("longitudeDeg", longitudeDeg, LONGITUDE)
                .check("altitudeM", altitudeM, Atmosphere.ALTITUDE)
                .check("utcOffsetH", utcOffsetH, UTC_OFFSET)
                .refuseIfAny();
    }
}
