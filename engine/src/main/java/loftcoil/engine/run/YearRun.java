package loftcoil.engine.run;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Fire;

/**
 * A year of the whole system: fire, loop, tank in layers, sun and draws marched together.
 *
 * <p>What is taken for granted: every day of a month has the month's mean weather; every day has the same draws, and every day of a
 * lit month the same fire; room, loft and cold supply keep their temperature all year; the tank is refilled with cold water as
 * it is drawn. The energy account closes to rounding, because each heat is booked as it is moved. Without a fire in the design
 * the coil is never lit; without a window there is no sun.
 *
 * @param months the twelve months, January first
 * @param energy the account of the year
 * @param shortfallKWh heat missing at the taps against what was wanted
 * @param woodKg wood burnt, moist as it is
 * @param hottestC hottest water in the tank
 * @param boilingMin minutes in which water boiled in the loop or the tank
 * @param backwardH hours in which, the fire out, the loop ran backward
 * @param litres what came out of the taps
 * @param extremes the ends to which it went
 */
public record YearRun(
        List<MonthRow> months,
        EnergyBook energy,
        double shortfallKWh,
        double woodKg,
        double hottestC,
        double boilingMin,
        double backwardH,
        Litres litres,
        Extremes extremes) {

    private static final Recent<Marched, YearRun> YEARS = new Recent<>(16);

    private record Marched(Design design, Pace pace) {
        YearRun run() {
            return of(SystemPlan.of(design, pace, Heatings.of(design)));
        }
    }

    /** Keeps a copy of the months. */
    public YearRun {
        months = List.copyOf(months);
    }

    /** The whole year as one row; its month is 0. */
    public MonthRow whole() {
        return new MonthRow(0, energy, shortfallKWh, woodKg, hottestC, boilingMin, litres);
    }

    /**
     * Marches a year at {@link Pace#YEAR}.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed, or a month has more sun than its
     *     place can have
     */
    public static YearRun of(Design design) {
        return of(design, Pace.YEAR);
    }

    /**
     * Marches a year.
     *
     * @param design a design
     * @param pace how finely
     * @throws loftcoil.engine.fault.RefusedException as {@link #of(Design)}
     */
    public static YearRun of(Design design, Pace pace) {
        return YEARS.of(new Marched(design, pace), Marched::run);
    }

    private static double coldestMonthC(Design design) {
        return design.site().monthly().meanAirC().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }

    static YearRun of(SystemPlan plan) {
        SystemMarch march = new SystemMarch(plan);
        for (int day = -plan.pace().runInDays(); day < 0; day++) {
            march.day(day);
        }
        double burnKgPerH = plan.design().fire().map(Fire::burnKgPerH).orElse(0.0);
        march.takeHottestC();
        march.watch().begin();
        Totals start = march.totals();
        Totals before = start;
        List<MonthRow> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            int first = Calendar.firstDay(month);
            for (int day = first; day < first + Calendar.length(month); day++) {
                march.day(day);
            }
            Totals now = march.totals();
            months.add(MonthRow.of(month, now.since(before), burnKgPerH, march.takeHottestC()));
            before = now;
        }
        Totals year = before.since(start);
        double hottestC = months.stream().mapToDouble(MonthRow::hottestC).max().orElse(0);
        MonthRow whole = MonthRow.of(0, year, burnKgPerH, hottestC);
        return new YearRun(
                months,
                whole.energy(),
                whole.shortfallKWh(),
                whole.woodKg(),
                hottestC,
                whole.boilingMin(),
                year.times().backwardS() / 3600,
                whole.litres(),
                march.watch().extremes(hottestC, coldestMonthC(plan.design())));
    }
}
