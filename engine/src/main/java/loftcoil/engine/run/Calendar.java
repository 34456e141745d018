package loftcoil.engine.run;

import java.time.Month;

/** The common year: day numbers from 0 and months from 1. */
final class Calendar {

    static final int DAYS = 365;

    private static final int[] MONTH_OF_DAY = months();

    private Calendar() {}

    /** Month of a day, 1 to 12; days before and after the year count round. */
    static int month(int day) {
        return MONTH_OF_DAY[Math.floorMod(day, DAYS)];
    }

    /** First day of a month, 1 to 12. */
    static int firstDay(int month) {
        return Month.of(month).firstDayOfYear(false) - 1;
    }

    /** Days in a month, 1 to 12. */
    static int length(int month) {
        return Month.of(month).length(false);
    }

    private static int[] months() {
        int[] months = new int[DAYS];
        for (int month = 1; month <= 12; month++) {
            java.util.Arrays.fill(months, firstDay(month), firstDay(month) + length(month), month);
        }
        return months;
    }
}
