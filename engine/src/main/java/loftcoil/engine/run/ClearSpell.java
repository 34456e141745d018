package loftcoil.engine.run;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loftcoil.engine.sun.Weather;
import loftcoil.engine.tank.Layers;

/**
 * The hottest of weeks without a cloud, one from the middle of each sunny month of a mean year. Five days are lived as always, draws and fire
 * with them; over the last two, a weekend, nobody is at home: nothing is drawn, no fire is lit and the sun goes on.
 *
 * <p>Seven days, because most summers have such a week and a tank of some hundred litres has settled after it; one of a thousand would go
 * on rising, so that it is no bound for such tanks. Two days away, because whoever comes home opens a tap.
 *
 * @param month month of the hottest week, 1 to 12
 * @param hottestTankC hottest water in the tank, °C
 * @param hottestDrawC hottest water at the draw port, °C
 */
public record ClearSpell(int month, double hottestTankC, double hottestDrawC) {

    /** Clear days on end. */
    public static final int DAYS = 7;

    /** Of them, the last, days with nobody at home. */
    public static final int AWAY_DAYS = 2;

    /** Months whose clear days bring less than this share of those of the best are not tried, but for the hottest of the year. */
    private static final double TRIED_FROM = 0.85;

    /** The hottest week of a system, from its tank in the middle of each month; empty where it has no panes. */
    static Optional<ClearSpell> of(SystemPlan plan, YearMarch year) {
        SystemPlan clear = plan.under(Weather.CLEAR);
        return clear.window().flatMap(sun -> {
            List<Double> absorbed = IntStream.rangeClosed(1, 12)
                    .mapToObj(sun::absorbedKWhPerM2Day)
                    .toList();
            double best = Collections.max(absorbed);
            return year.run().months().stream()
                    .filter(row -> row.hottestC() >= year.run().hottestC()
                            || absorbed.get(row.month() - 1) >= TRIED_FROM * best)
                    .map(row -> week(clear, row.month(), year.middle(row.month())))
                    .max(Comparator.comparingLong(ClearSpell::halfKelvins)
                            .thenComparingDouble(week -> absorbed.get(week.month() - 1)));
        });
    }

    /** Weeks that all boil are as hot as each other: among such the sunniest is told of. */
    private long halfKelvins() {
        return Math.round(2 * hottestTankC);
    }

    private static ClearSpell week(SystemPlan plan, int month, Layers tank) {
        SystemMarch march = new SystemMarch(plan, tank);
        int first = Calendar.firstDay(month) + YearMarch.MIDDLE_DAY;
        for (int day = 0; day < DAYS; day++) {
            march.home(day < DAYS - AWAY_DAYS);
            march.day(first + day);
        }
        double tankC = march.takeHottestC();
        // Air and month's mean do not matter to the draw port.
        return new ClearSpell(month, tankC, march.watch().extremes(tankC, 0).hottestDrawC());
    }
}
