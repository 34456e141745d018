package loftcoil.engine.run;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.sun.Weather;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.use.DrawOff;

/**
 * A week with {@link Weather#DULL_SHARE} of its month's sun, from the middle of that month of a mean year, fire and draws as always.
 *
 * @param month 1 to 12
 * @param shortShare heat missing at the taps over that wanted, in this week; 0 to 1
 * @param meanShortShare the same over the month's mean days; 0 to 1
 */
public record DullWeek(int month, double shortShare, double meanShortShare) {

    /** Days of it. */
    public static final int DAYS = 7;

    /**
     * Of the weeks of a year, one a month, the one that misses most beyond what its mean days miss; empty where no sun shines or nothing is
     * drawn.
     *
     * @param mean the year on mean days
     */
    static Optional<DullWeek> worst(SystemPlan plan, YearMarch mean) {
        double wantedJ = plan.draws().stream()
                .map(PlannedDraw::draw)
                .mapToDouble(draw -> wantedJ(plan, draw))
                .sum();
        if (plan.window().isEmpty() || !(wantedJ > 0)) {
            return Optional.empty();
        }
        SystemPlan dull = plan.under(Weather.DULL);
        Optional<DullWeek> worst = Optional.empty();
        for (MonthRow row : sunniestFirst(mean.run())) {
            double wantedInMonthJ = wantedJ * Calendar.length(row.month());
            double lacking = (1 - Weather.DULL_SHARE) * row.energy().solarKWh() * Totals.J_PER_KWH / wantedInMonthJ;
            // No week misses more for its dullness than the sun it lacks, and the months to come lack less.
            if (worst.isPresent() && worst.get().ofTheDullness() >= lacking) {
                break;
            }
            double weekJ = shortJ(dull, row.month(), mean.middle(row.month()));
            double meanJ = row.shortfallKWh() * Totals.J_PER_KWH;
            DullWeek week = new DullWeek(row.month(), share(weekJ, wantedJ * DAYS), share(meanJ, wantedInMonthJ));
            if (worst.isEmpty() || week.ofTheDullness() > worst.get().ofTheDullness()) {
                worst = Optional.of(week);
            }
        }
        return worst;
    }

    private static List<MonthRow> sunniestFirst(YearRun year) {
        return year.months().stream()
                .sorted(Comparator.comparingDouble(row -> -row.energy().solarKWh() / Calendar.length(row.month())))
                .toList();
    }

    /** What it misses beyond what the month's mean days miss, of the heat wanted. */
    public double ofTheDullness() {
        return shortShare - meanShortShare;
    }

    private static double wantedJ(SystemPlan plan, DrawOff draw) {
        return draw.wantedJ(plan.design().site().coldSupplyC());
    }

    private static double shortJ(SystemPlan plan, int month, Layers tank) {
        SystemMarch march = new SystemMarch(plan, tank);
        int first = Calendar.firstDay(month) + YearMarch.MIDDLE_DAY;
        for (int day = first; day < first + DAYS; day++) {
            march.day(day);
        }
        return march.totals().shortJ();
    }

    private static double share(double missing, double wanted) {
        return Math.min(1, Math.max(0, missing / wanted));
    }
}
