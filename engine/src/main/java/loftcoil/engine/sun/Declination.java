package loftcoil.engine.sun;

import loftcoil.engine.fault.RefusedException;

/**
 * The sun's height over the equator by the textbook formula of Cooper (1969), Duffie and Beckman equation 1.6.1a: {@code
 * 23.45 sin(360 (284 + n) / 365)}. Within 0.5 degree except near the equinoxes, where it is up to 1 degree off. For hand
 * calculation and lessons; the year uses {@link SunAngles}.
 */
public final class Declination {

    private Declination() {}

    /**
     * Declination on a day.
     *
     * @param dayNumber day of the year, 1 to 366
     * @return degrees, positive when the sun is north of the equator
     * @throws RefusedException where the day is outside its range
     */
    public static double cooperDeg(int dayNumber) {
        DayOfYear.RANGE.require("dayNumber", dayNumber);
        return 23.45 * Math.sin(DayOfYear.turn(284.0 + dayNumber));
    }
}
