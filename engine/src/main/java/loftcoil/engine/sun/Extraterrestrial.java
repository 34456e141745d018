package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * The sun outside the air. The solar constant is 1367 W/m² (World Radiation Center), not the newer 1361 W/m² (Kopp and
 * Lean, 2011), because the sky correlations used here were fitted with it. Duffie and Beckman equations 1.4.1a, 1.6.10 and
 * 1.10.3.
 */
public final class Extraterrestrial {

    /** Solar constant, W/m². */
    public static final double SOLAR_CONSTANT_W_PER_M2 = 1367;

    private static final Allowed DECLINATION = new Allowed(-25, 25, "°");

    private Extraterrestrial() {}

    /**
     * What falls square on to a surface facing the sun outside the air.
     *
     * @param dayNumber day of the year, 1 to 366
     * @return W/m², 1322 in July to 1412 in January
     * @throws RefusedException where the day is outside its range
     */
    public static double normalWPerM2(int dayNumber) {
        DayOfYear.RANGE.require("dayNumber", dayNumber);
        return SOLAR_CONSTANT_W_PER_M2 * (1 + 0.033 * Math.cos(DayOfYear.turn(dayNumber)));
    }

    /**
     * How far the sun turns between noon and sunset.
     *
     * @param latitudeDeg latitude in degrees, north positive
     * @param declinationDeg declination in degrees, -25 to 25
     * @return degrees, 15 an hour: 0 in the polar night, 180 under the midnight sun
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double sunsetHourAngleDeg(double latitudeDeg, double declinationDeg) {
        double latitude = Math.toRadians(Place.LATITUDE.require("latitudeDeg", latitudeDeg));
        double declination = Math.toRadians(DECLINATION.require("declinationDeg", declinationDeg));
        double cosine = -Math.tan(latitude) * Math.tan(declination);
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }

    /**
     * A day's sun on the horizontal outside the air, with the declination of {@link Declination}.
     *
     * @param latitudeDeg latitude in degrees, north positive
     * @param dayNumber day of the year, 1 to 366
     * @return MJ/m² in the day
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double dailyMJPerM2(double latitudeDeg, int dayNumber) {
        double declination = Declination.cooperDeg(dayNumber);
        double sunset = Math.toRadians(sunsetHourAngleDeg(latitudeDeg, declination));
        double lat = Math.toRadians(latitudeDeg);
        double dec = Math.toRadians(declination);
        double turned = Math.cos(lat) * Math.cos(dec) * Math.sin(sunset) + sunset * Math.sin(lat) * Math.sin(dec);
        return Math.max(0, 86_400 / Math.PI * normalWPerM2(dayNumber) * turned / 1e6);
    }
}
