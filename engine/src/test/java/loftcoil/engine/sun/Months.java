package loftcoil.engine.sun;

import java.util.function.ToDoubleBiFunction;

/** Monthly sums the tests take over a year, minute by minute or step by step. */
final class Months {

    record Mean(double globalWPerM2, double airC) {}

    private Months() {}

    static Mean mean(SkyYear year, int month) {
        double global = 0;
        double air = 0;
        int minutes = 0;
        for (int minute = 0; minute < SkyYear.MINUTES; minute++) {
            if (DayOfYear.month(minute / 1440) == month - 1) {
                global += year.globalWPerM2(minute);
                air += year.airC(minute);
                minutes++;
            }
        }
        return new Mean(global / minutes, air / minutes);
    }

    /** Mean day of a month in kWh/m² of what a model makes of sun and light. */
    static double tilted(SkyYear year, int month, ToDoubleBiFunction<SunAngles, SkyLight> model) {
        SunYear sun = year.sun();
        double sum = 0;
        for (int step = 0; step < sun.steps(); step++) {
            if (DayOfYear.month(sun.dayOf(step)) == month - 1 && sun.sun(step).cosZenith() > 0) {
                sum += model.applyAsDouble(sun.sun(step), year.light(step));
            }
        }
        return sum * sun.stepHours() / 1000 / DayOfYear.length(month - 1);
    }
}
