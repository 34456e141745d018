package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * How a mean day's sun is spread over its hours: Collares-Pereira and Rabl (1979), Solar Energy 22, 155, for the global and
 * Liu and Jordan (1960) for the diffuse; Duffie and Beckman equations 2.13.2 and 2.13.4. Each ratio is the hour's share of
 * the day.
 */
public final class DaySplit {

    private static final Allowed HOUR_ANGLE = new Allowed(-180, 180, "°");
    private static final Allowed SUNSET = new Allowed(0, 180, "°");

    private DaySplit() {}

    /**
     * Share of the day's global that falls in the hour about an hour angle.
     *
     * @param hourAngleDeg middle of the hour in degrees from solar noon, -180 to 180
     * @param sunsetHourAngleDeg the day's sunset hour angle, 0 to 180
     * @return for each hour; 0 at night
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double globalPerHour(double hourAngleDeg, double sunsetHourAngleDeg) {
        double peak = peaking(hourAngleDeg, sunsetHourAngleDeg);
        return Math.max(0, peak) * diffusePerHour(hourAngleDeg, sunsetHourAngleDeg);
    }

    /**
     * Share of the day's diffuse that falls in the hour about an hour angle.
     *
     * @param hourAngleDeg middle of the hour in degrees from solar noon, -180 to 180
     * @param sunsetHourAngleDeg the day's sunset hour angle, 0 to 180
     * @return for each hour; 0 at night
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double diffusePerHour(double hourAngleDeg, double sunsetHourAngleDeg) {
        double hour = Math.toRadians(HOUR_ANGLE.require("hourAngleDeg", hourAngleDeg));
        double sunset = Math.toRadians(SUNSET.require("sunsetHourAngleDeg", sunsetHourAngleDeg));
        double dayArea = Math.sin(sunset) - sunset * Math.cos(sunset);
        double height = Math.cos(hour) - Math.cos(sunset);
        return height > 0 && dayArea > 0 ? Math.PI / 24 * height / dayArea : 0;
    }

    /** Global over diffuse share: a clear noon is brighter than the diffuse spread says. */
    static double peaking(double hourAngleDeg, double sunsetHourAngleDeg) {
        double late = Math.sin(Math.toRadians(sunsetHourAngleDeg - 60));
        double a = 0.409 + 0.5016 * late;
        double b = 0.6609 - 0.4767 * late;
        return a + b * Math.cos(Math.toRadians(hourAngleDeg));
    }
}
