package loftcoil.engine.sun;

import java.time.LocalDateTime;

/**
 * The sun over a place through one common year at the middle of each step: computed once, then looked up. The year is
 * {@value #YEAR}; any other common year moves the sun by up to 0.3 degree of declination at the equinoxes, as the leap days
 * do.
 */
final class SunYear {

    static final int YEAR = 2026;

    private static final int DAY_MIN = 1440;

    private final int stepMinutes;
    private final int stepsPerDay;
    private final SunAngles[] suns;
    private final double[] dailyWh = new double[DayOfYear.COUNT];

    SunYear(Place place, int stepMinutes) {
        this.stepMinutes = stepMinutes;
        this.stepsPerDay = DAY_MIN / stepMinutes;
        this.suns = new SunAngles[DayOfYear.COUNT * stepsPerDay];
        LocalDateTime middle = LocalDateTime.of(YEAR, 1, 1, 0, 0).plusSeconds(30L * stepMinutes);
        for (int step = 0; step < suns.length; step++) {
            suns[step] = SunAngles.at(place, middle);
            middle = middle.plusMinutes(stepMinutes);
            dailyWh[dayOf(step)] += outsideWPerM2(step) * stepHours();
        }
    }

    int steps() {
        return suns.length;
    }

    int stepsPerDay() {
        return stepsPerDay;
    }

    int stepMinutes() {
        return stepMinutes;
    }

    double stepHours() {
        return stepMinutes / 60.0;
    }

    int dayOf(int step) {
        return step / stepsPerDay;
    }

    /** Clock hour at the middle of a step, 0 to 24. */
    double hourOf(int step) {
        return (step % stepsPerDay + 0.5) * stepHours();
    }

    SunAngles sun(int step) {
        return suns[step];
    }

    /** The day's sun on the horizontal outside the air, in Wh/m², summed over the steps. */
    double outsideDailyWhPerM2(int day) {
        return dailyWh[day];
    }

    /** A copy of the 365 daily sums, in Wh/m². */
    double[] outsideDailyWhPerM2() {
        return dailyWh.clone();
    }

    /** On the horizontal outside the air, in W/m²; 0 at night. */
    double outsideWPerM2(int step) {
        return Math.max(0, suns[step].cosZenith()) * normalWPerM2(step);
    }

    /** Square to the sun outside the air, in W/m². */
    double normalWPerM2(int step) {
        return Extraterrestrial.normalWPerM2(dayOf(step) + 1);
    }
}
