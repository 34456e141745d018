package loftcoil.engine.run;

import java.util.Optional;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.watch.Watch;

/**
 * A year, and where the coil's heat is worked out from the fire, the same year with the least and the most it may give.
 *
 * @param mid the year with the heat as stated, or as best estimated
 * @param low the year with the least heat; empty where the heat is stated
 * @param high the year with the most heat; empty where the heat is stated
 * @param weeks the clear week with the most heat, and the dull one with the heat as stated or as best estimated
 */
public record YearSpread(YearRun mid, Optional<YearRun> low, Optional<YearRun> high, Weeks weeks) {

    private static final double USUAL_INLET_C = 40;

    private static final Recent<Design, YearSpread> SPREADS = new Recent<>(8);

    /**
     * Marches the years.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException as {@link YearRun#of(Design)}
     */
    public static YearSpread of(Design design) {
        return of(design, Watch.NONE);
    }

    /**
     * The same, watched.
     *
     * @throws loftcoil.engine.fault.RefusedException as {@link YearRun#of(Design)}
     * @throws Watch.StoppedException where the watch ends it
     */
    public static YearSpread of(Design design, Watch watch) {
        return SPREADS.of(design, key -> marched(key, Pace.YEAR, watch));
    }

    /**
     * Marches the years at {@link Pace#ROUGH}: no figure to show, only a guess at where to look. What is said of dangers looks at the years with
     * the least and the most heat; where there are these, the best estimate is not marched and the most stands in its place.
     *
     * @throws loftcoil.engine.fault.RefusedException as {@link YearRun#of(Design)}
     */
    public static YearSpread rough(Design design) {
        CoilHeating heating = Heatings.of(design);
        SystemPlan plan = SystemPlan.of(design, Pace.ROUGH, heating);
        LowMidHigh heat = heat(design);
        // A dull week is never a danger: a guess at dangers goes without.
        if (!isSpread(heat)) {
            YearMarch mid = YearMarch.of(plan);
            return new YearSpread(mid.run(), Optional.empty(), Optional.empty(), weeks(plan, mid, Optional.empty()));
        }
        YearRun low =
                YearMarch.of(plan.with(heating.times(heat.low() / heat.mid()))).run();
        SystemPlan hot = plan.with(heating.times(heat.high() / heat.mid()));
        YearMarch high = YearMarch.of(hot);
        return new YearSpread(
                high.run(), Optional.of(low), Optional.of(high.run()), weeks(hot, high, Optional.empty()));
    }

    private static LowMidHigh heat(Design design) {
        return design.coilHeatW(CoilHeating.USUAL_FLOW_KG_PER_S, USUAL_INLET_C);
    }

    private static boolean isSpread(LowMidHigh heat) {
        return heat.low() < heat.high() && heat.mid() > 0;
    }

    private static YearSpread marched(Design design, Pace pace, Watch watch) {
        watch.pass(Watch.Stage.YEAR, 0, 1);
        CoilHeating heating = Heatings.of(design);
        SystemPlan plan = SystemPlan.of(design, pace, heating);
        YearMarch mid = YearRun.march(design, pace, watch);
        Optional<DullWeek> dull = DullWeek.worst(plan, mid);
        LowMidHigh heat = heat(design);
        if (!isSpread(heat)) {
            watch.pass(Watch.Stage.WEEKS, 0, 1);
            return new YearSpread(mid.run(), Optional.empty(), Optional.empty(), weeks(plan, mid, dull));
        }
        YearRun low = YearMarch.of(plan.with(heating.times(heat.low() / heat.mid())), watch, Watch.Stage.LEAST)
                .run();
        SystemPlan hot = plan.with(heating.times(heat.high() / heat.mid()));
        YearMarch high = YearMarch.of(hot, watch, Watch.Stage.MOST);
        watch.pass(Watch.Stage.WEEKS, 0, 1);
        return new YearSpread(mid.run(), Optional.of(low), Optional.of(high.run()), weeks(hot, high, dull));
    }

    private static Weeks weeks(SystemPlan hottest, YearMarch year, Optional<DullWeek> dull) {
        return new Weeks(ClearSpell.of(hottest, year), dull);
    }
}
