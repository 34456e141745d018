package loftcoil.engine.study;

import java.util.List;
import loftcoil.engine.loop.Circuit;

/**
 * How far the figures of a loop may be off, by drawing what is not surely known again and again (Monte Carlo, JCGM 101:2008) and
 * searching the loop each time. The percentiles are those of the loops that circulate without boiling; the others are counted.
 *
 * @param samples loops searched
 * @param boilsShare share that boils, 0 to 1
 * @param stillShare share that does not circulate, 0 to 1
 * @param flowKgPerS flow, kg/s
 * @param boilMarginK least distance from boiling, K
 * @param coilOutC temperature at the coil's outlet, °C
 * @param influences what moves flow and margin, in the order of the doubts; empty where fewer than three loops circulate
 */
public record LoopSpread(
        int samples,
        double boilsShare,
        double stillShare,
        Percentiles flowKgPerS,
        Percentiles boilMarginK,
        Percentiles coilOutC,
        List<Influence> influences) {

    /** Keeps a copy of the influences. */
    public LoopSpread {
        influences = List.copyOf(influences);
    }

    /**
     * Spreads a loop.
     *
     * @param circuit the loop with the fire lit, as best known
     * @param doubts what is not surely known
     * @param plan how many loops, from which seed, on how many threads
     * @param watch is told of each few dozen loops, and may stop; the result is then that of the loops searched by then
     */
    public static SearchOutcome<LoopSpread> of(
            Circuit circuit, LoopDoubts doubts, SpreadPlan plan, ProgressListener watch) {
        LoopSamples samples = new LoopSamples(circuit, doubts, new LoopDraws(plan), plan.samples());
        int done = Workers.each(plan.samples(), plan.threads(), samples::search, watch);
        LoopSpread spread = samples.spread();
        return done == plan.samples()
                ? new SearchOutcome.Finished<>(spread)
                : new SearchOutcome.Cancelled<>(spread, done, plan.samples());
    }
}
