package loftcoil.engine.sun;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands, without refraction.
 *
 * @param zenithDeg angle from straight up in degrees, 0 to 180; above 90 the sun is down
 * @param azimuthDeg bearing in degrees from north through east, 0 to 360
 * @param declinationDeg angle north of the equator in degrees
 * @param hourAngleDeg how far it has turned since solar noon in degrees, 15 an hour, negative in the morning, -180 to 180
 */
public record SunAngles(double zenithDeg, double azimuthDeg, double declinationDeg, double hourAngleDeg) {

    /** Years in which {@link #at} holds its accuracy. */
    public static final Allowed YEARS = new Allowed(2010, 2110, "");

    private static final Allowed ANY_ANGLE = new Allowed(-360, 360, "°");

    /** Earth's rotation lags uniform time by about this in the decade of 2020; 10 s more moves the sun by 0.0001 degree. */
    private static final double DELTA_T_S = 69.2;

    /**
     * The sun over a place by the algorithm of Grena (2012) no. 3, stated accuracy 0.01 degree from 2010 to 2110.
     *
     * @param place where
     * @param clock date and time as the place's clock shows it
     * @throws RefusedException where the year is outside {@link #YEARS}
     */
    public static SunAngles at(Place place, LocalDateTime clock) {
        YEARS.require("year", clock.getYear());
        ZoneOffset offset = ZoneOffset.ofTotalSeconds((int) Math.round(3600 * place.utcOffsetH()));
        SolarPosition sun = Grena3.calculateSolarPosition(
                ZonedDateTime.of(clock, offset), place.latitudeDeg(), place.longitudeDeg(), DELTA_T_S);
        return seen(place.latitudeDeg(), sun.zenithAngle(), sun.azimuth());
    }

    /**
     * The sun from the textbook's three angles: Duffie and Beckman equations 1.6.5 and 1.6.6.
     *
     * @param latitudeDeg latitude in degrees, north positive
     * @param declinationDeg declination in degrees
     * @param hourAngleDeg hour angle in degrees, negative in the morning
     * @throws RefusedException where one is not a number or outside a whole turn
     */
    public static SunAngles of(double latitudeDeg, double declinationDeg, double hourAngleDeg) {
        double lat = Math.toRadians(Place.LATITUDE.require("latitudeDeg", latitudeDeg));
        double dec = Math.toRadians(Place.LATITUDE.require("declinationDeg", declinationDeg));
        double hour = Math.toRadians(ANY_ANGLE.require("hourAngleDeg", hourAngleDeg));
        double up = Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.cos(hour);
        double north = Math.cos(lat) * Math.sin(dec) - Math.sin(lat) * Math.cos(dec) * Math.cos(hour);
        double east = -Math.cos(dec) * Math.sin(hour);
        double azimuth = Math.toDegrees(Math.atan2(east, north));
        double zenith = Math.toDegrees(Math.atan2(Math.hypot(north, east), up));
        return new SunAngles(zenith, azimuth < 0 ? azimuth + 360 : azimuth, declinationDeg, hourAngleDeg);
    }

    /** The cosine of the zenith angle: above 0 by day. */
    public double cosZenith() {
        return Math.cos(Math.toRadians(zenithDeg));
    }

    /** Turns what is seen from the ground back to the equator: the inverse of {@link #of}. */
    private static SunAngles seen(double latitudeDeg, double zenithDeg, double azimuthDeg) {
        double lat = Math.toRadians(latitudeDeg);
        double up = Math.cos(Math.toRadians(zenithDeg));
        double flat = Math.sin(Math.toRadians(zenithDeg));
        double north = flat * Math.cos(Math.toRadians(azimuthDeg));
        double east = flat * Math.sin(Math.toRadians(azimuthDeg));
        double sine = up * Math.sin(lat) + north * Math.cos(lat);
        double hour = Math.atan2(-east, up * Math.cos(lat) - north * Math.sin(lat));
        double declination = Math.asin(Math.max(-1, Math.min(1, sine)));
        return new SunAngles(zenithDeg, azimuthDeg, Math.toDegrees(declination), Math.toDegrees(hour));
    }
}
