package loftcoil.engine.sun;

/**
 * Solar time against clock time, by which {@link SunAngles} is checked: Duffie and Beckman equations 1.5.2 and 1.5.3, the equation
 * of time by Spencer (1971), within half a minute.
 */
final class SolarTime {

    private static final double MINUTES_PER_DEG = 4;

    private SolarTime() {}

    /**
     * The equation of time: how far a sundial is ahead of a steady clock.
     *
     * @param dayNumber day of the year, 1 to 366
     * @return minutes, -14.3 to 16.4 over the year
     */
    static double equationOfTimeMin(int dayNumber) {
        double turn = DayOfYear.turn(dayNumber - 1.0);
        return 229.2
                * (0.000075
                        + 0.001868 * Math.cos(turn)
                        - 0.032077 * Math.sin(turn)
                        - 0.014615 * Math.cos(2 * turn)
                        - 0.04089 * Math.sin(2 * turn));
    }

    /**
     * What to add to the clock to get solar time.
     *
     * @param place gives the longitude and the clock's offset
     * @param dayNumber day of the year, 1 to 366
     * @return minutes
     */
    static double solarMinusClockMin(Place place, int dayNumber) {
        double standardMeridianDeg = 15 * place.utcOffsetH();
        return MINUTES_PER_DEG * (place.longitudeDeg() - standardMeridianDeg) + equationOfTimeMin(dayNumber);
    }
}
