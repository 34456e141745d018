package loftcoil.engine.words;

import java.util.Locale;

/** An hour of the day as a clock shows it, to the minute. */
final class ClockTime {

    private static final int MIN_PER_H = 60;
    private static final int HALF_DAY_MIN = 12 * MIN_PER_H;
    private static final int DAY_MIN = 2 * HALF_DAY_MIN;

    private ClockTime() {}

    /** By a clock of 24 hours, such as 17:30. */
    static String of24(double hours) {
        long minutes = minutes(hours);
        return String.format(Locale.ROOT, "%d:%02d", minutes / MIN_PER_H, minutes % MIN_PER_H);
    }

    /** By a clock of twice twelve hours, such as 5:30 pm. */
    static String twiceTwelve(double hours) {
        long minutes = minutes(hours);
        if (minutes % HALF_DAY_MIN == 0) {
            return minutes == HALF_DAY_MIN ? "12 noon" : "12 midnight";
        }
        long half = minutes % HALF_DAY_MIN;
        long hour = half / MIN_PER_H == 0 ? 12 : half / MIN_PER_H;
        return String.format(Locale.ROOT, "%d:%02d %s", hour, half % MIN_PER_H, minutes < HALF_DAY_MIN ? "am" : "pm");
    }

    private static long minutes(double hours) {
        return Math.floorMod(Math.round(hours * MIN_PER_H), DAY_MIN);
    }
}
