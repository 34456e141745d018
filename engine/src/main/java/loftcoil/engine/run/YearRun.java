package loftcoil.engine.run;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.watch.Watch;

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

    private static final Recent<Marched, YearMarch> YEARS = new Recent<>(16);

    private record Marched(Design design, Pace pace) {
        YearMarch march(Watch watch) {
            return YearMarch.of(SystemPlan.of(design, pace, Heatings.of(design)), watch, Watch.Stage.YEAR);
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
        return march(design, pace).run();
    }

    static YearRun of(SystemPlan plan) {
        return YearMarch.of(plan).run();
    }

    /** The same with what is kept of it, shared by all who ask for it. */
    static YearMarch march(Design design, Pace pace) {
        return march(design, pace, Watch.NONE);
    }

    static YearMarch march(Design design, Pace pace, Watch watch) {
        return YEARS.of(new Marched(design, pace), marched -> marched.march(watch));
    }
}
