package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;

/** The days of a common year, numbered as the trade numbers them: 1 is 1 January, 365 is 31 December. */
final class DayOfYear {

    static final Allowed RANGE = new Allowed(1, 366, "");
    static final int COUNT = 365;
    static final int MONTHS = 12;

    private static final int[] LENGTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int[] MONTH_OF = monthOf();

    private DayOfYear() {}

    /** The month, 0 to 11, of a day index 0 to 364. */
    static int month(int dayIndex) {
        return MONTH_OF[dayIndex];
    }

    /** Days in a month 0 to 11. */
    static int length(int month) {
        return LENGTH[month];
    }

    /** Angle that goes round once a year, in radians, of the day's number. */
    static double turn(double dayNumber) {
        return 2 * Math.PI * dayNumber / COUNT;
    }

    private static int[] monthOf() {
        int[] months = new int[COUNT];
        int day = 0;
        for (int month = 0; month < MONTHS; month++) {
            for (int i = 0; i < LENGTH[month]; i++) {
                months[day++] = month;
            }
        }
        return months;
    }
}
