package loftcoil.engine.run;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loftcoil.engine.design.Fire;

/** Which part of each step of a day the fire burns: of the fires lit that day, and of those lit the day before. */
final class FireHours {

    private static final double DAY_H = 24;

    private final double[] today;
    private final double[] fromYesterday;
    private final boolean[] litMonth = new boolean[13];

    FireHours(Fire fire, int stepS) {
        int steps = 86_400 / stepS;
        today = new double[steps];
        fromYesterday = new double[steps];
        double stepH = stepS / 3600.0;
        // Lit at 24 o'clock is lit at 0: the month is that of the day that ends.
        for (Fire.Lighting lit : fire.lightings()) {
            double from = lit.fromH();
            double until = from + lit.forH();
            for (int i = 0; i < steps; i++) {
                today[i] += overlap(i * stepH, (i + 1) * stepH, from, Math.min(DAY_H, until)) / stepH;
                fromYesterday[i] += overlap(i * stepH, (i + 1) * stepH, from - DAY_H, until - DAY_H) / stepH;
            }
        }
        Set<Integer> months = new HashSet<>(fire.months());
        for (int month = 1; month <= 12; month++) {
            litMonth[month] = months.contains(month);
        }
    }

    /** A year without fire. */
    static FireHours none(int stepS) {
        return new FireHours(new Fire("hardwood", 0, 1, 0, 0, List.of()), stepS);
    }

    /** Share of a step in which the fire burns, 0 to 1. */
    double share(int month, int monthOfYesterday, int stepOfDay) {
        double share =
                (litMonth[month] ? today[stepOfDay] : 0) + (litMonth[monthOfYesterday] ? fromYesterday[stepOfDay] : 0);
        return Math.min(1, share);
    }

    private static double overlap(double low, double high, double from, double until) {
        return Math.max(0, Math.min(high, until) - Math.max(low, from));
    }
}
