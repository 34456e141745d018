package loftcoil.engine.run;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Fire;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.watch.Watch;

/**
 * A year marched, and the tank as it stood on a day in the middle of each month, from which other weather can be tried.
 *
 * @param run the year
 * @param middles the tank at the start of {@link #MIDDLE_DAY} of each month, January first; to be copied, not marched on
 * @param marchedDays days that were marched, the run-in with them: the others were taken as one of these
 * @param steps steps that were taken
 * @param looks times that flow and heat of the loop were looked up
 */
record YearMarch(YearRun run, List<Layers> middles, long marchedDays, long steps, long looks) {

    /** Day of the month at whose start the tank is kept, from 0: a week from there lies about the month's middle. */
    static final int MIDDLE_DAY = 11;

    private static final int LAST_DAYS = 2;

    /** The tank at the start of the middle days of a month, 1 to 12, to march on. */
    Layers middle(int month) {
        return middles.get(month - 1).copy();
    }

    static YearMarch of(SystemPlan plan) {
        return of(plan, Watch.NONE, Watch.Stage.YEAR);
    }

    /** The same, watched month by month as that stage. */
    static YearMarch of(SystemPlan plan, Watch watch, Watch.Stage stage) {
        SystemMarch march = new SystemMarch(plan);
        DayBlocks blocks = new DayBlocks(march, plan.pace());
        runIn(blocks, plan.pace().runInDays());
        double burnKgPerH = plan.design().fire().map(Fire::burnKgPerH).orElse(0.0);
        march.takeHottestC();
        march.watch().begin();
        Totals start = blocks.counted();
        Totals before = start;
        List<MonthRow> months = new ArrayList<>();
        List<Layers> middles = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            watch.pass(stage, month - 1, 12);
            int first = Calendar.firstDay(month);
            blocks.days(first, MIDDLE_DAY);
            middles.add(march.tank().copy());
            endOfMonth(blocks, first + MIDDLE_DAY, Calendar.length(month) - MIDDLE_DAY);
            Totals now = blocks.counted();
            months.add(MonthRow.of(month, now.since(before), burnKgPerH, march.takeHottestC()));
            before = now;
        }
        double hottestC = months.stream().mapToDouble(MonthRow::hottestC).max().orElse(0);
        Totals year = before.since(start);
        MonthRow whole = MonthRow.of(0, year, burnKgPerH, hottestC);
        YearRun run = new YearRun(
                months,
                whole.energy(),
                whole.shortfallKWh(),
                whole.woodKg(),
                hottestC,
                whole.boilingMin(),
                year.times().backwardS() / 3600,
                whole.litres(),
                march.watch().extremes(hottestC, coldestMonthC(plan)));
        return new YearMarch(run, List.copyOf(middles), blocks.marchedDays(), march.stepsTaken(), march.looks());
    }

    /** Cut as a December is, so that a year that has settled ends where it began. */
    private static void runIn(DayBlocks blocks, int days) {
        int late = Math.min(days, Calendar.length(12) - MIDDLE_DAY);
        blocks.days(-days, days - late);
        endOfMonth(blocks, -late, late);
    }

    private static void endOfMonth(DayBlocks blocks, int first, int days) {
        int last = Math.min(days, LAST_DAYS);
        blocks.days(first, days - last);
        // The hottest day of a month is often its last, and of the year the last on which the fire is lit.
        blocks.days(first + days - last, last);
    }

    private static double coldestMonthC(SystemPlan plan) {
        return plan.design().site().monthly().meanAirC().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }
}
