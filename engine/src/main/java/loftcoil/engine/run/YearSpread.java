package loftcoil.engine.run;

import java.util.Optional;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.LowMidHigh;

/**
 * A year, and where the coil's heat is worked out from the fire, the same year with the least and the most it may give.
 *
 * @param mid the year with the heat as stated, or as best estimated
 * @param low the year with the least heat; empty where the heat is stated
 * @param high the year with the most heat; empty where the heat is stated
 */
public record YearSpread(YearRun mid, Optional<YearRun> low, Optional<YearRun> high) {

    private static final double USUAL_INLET_C = 40;

    private static final Recent<Design, YearSpread> SPREADS = new Recent<>(8);

    /**
     * Marches the years.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException as {@link YearRun#of(Design)}
     */
    public static YearSpread of(Design design) {
        return SPREADS.of(design, YearSpread::marched);
    }

    /**
     * Marches the years at {@link Pace#ROUGH}: no figure to show, only a guess at where to look.
     *
     * @throws loftcoil.engine.fault.RefusedException as {@link YearRun#of(Design)}
     */
    public static YearSpread rough(Design design) {
        return marched(design, Pace.ROUGH);
    }

    private static YearSpread marched(Design design) {
        return marched(design, Pace.YEAR);
    }

    private static YearSpread marched(Design design, Pace pace) {
        YearRun mid = YearRun.of(design, pace);
        LowMidHigh heat = design.coilHeatW(CoilHeating.USUAL_FLOW_KG_PER_S, USUAL_INLET_C);
        if (!(heat.low() < heat.high() && heat.mid() > 0)) {
            return new YearSpread(mid, Optional.empty(), Optional.empty());
        }
        CoilHeating heating = Heatings.of(design);
        SystemPlan plan = SystemPlan.of(design, pace, heating);
        YearRun low = YearRun.of(plan.with(heating.times(heat.low() / heat.mid())));
        YearRun high = YearRun.of(plan.with(heating.times(heat.high() / heat.mid())));
        return new YearSpread(mid, Optional.of(low), Optional.of(high));
    }
}
