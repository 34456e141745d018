package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Example;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.UncertaintyFactors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoopSpreadLawTest {

    private static final Circuit LIT = Example.orchardBothy().circuit(40);
    private static final SteadyFlow KNOWN = LIT.search().forward().orElseThrow();
    private static final Doubt NONE = Doubt.none();

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void theSameSeedGivesTheSameOnAnyNumberOfThreads(int threads) {
        assertEquals(spread(LIT, LoopDoubts.USUAL, 400, 1), spread(LIT, LoopDoubts.USUAL, 400, threads));
    }

    @Test
    void anotherSeedGivesAnotherDraw() {
        SearchOutcome<LoopSpread> one =
                LoopSpread.of(LIT, LoopDoubts.USUAL, new SpreadPlan(200, 1, 1), ProgressListener.NONE);
        SearchOutcome<LoopSpread> two =
                LoopSpread.of(LIT, LoopDoubts.USUAL, new SpreadPlan(200, 2, 1), ProgressListener.NONE);
        assertNotEquals(one.result().flowKgPerS(), two.result().flowKgPerS());
    }

    @Test
    void withoutDoubtAllLoopsAreTheOneKnown() {
        LoopSpread spread = spread(LIT, new LoopDoubts(NONE, NONE, NONE, NONE, NONE, NONE, 0), 50, 1);
        assertEquals(KNOWN.flowKgPerS(), spread.flowKgPerS().p5(), 1e-9);
        assertEquals(KNOWN.flowKgPerS(), spread.flowKgPerS().p95(), 1e-9);
        assertEquals(KNOWN.boilMargin().marginK(), spread.boilMarginK().p50(), 1e-6);
    }

    /**
     * With one doubt alone a figure that grows or falls with it keeps its order, so each percentile is the figure at that percentile
     * of the doubt. Of 2000 draws the share below a percentile p is off by sqrt(p (1 − p) / n): 0.011 at the half, 0.010 at a
     * quarter; three of that are allowed.
     */
    @Test
    void percentilesAreThoseOfTheDoubtThatMakesThem() {
        Doubt heat = new Doubt(0.6, 1.4);
        LoopSpread spread = spread(LIT, new LoopDoubts(heat, NONE, NONE, NONE, NONE, NONE, 0), 2000, 2);
        assertTrue(spread.boilMarginK().p50() <= marginAt(heat.at(0.5 - 0.034)));
        assertTrue(spread.boilMarginK().p50() >= marginAt(heat.at(0.5 + 0.034)));
        assertTrue(spread.boilMarginK().p25() <= marginAt(heat.at(0.75 - 0.030)));
        assertTrue(spread.boilMarginK().p25() >= marginAt(heat.at(0.75 + 0.030)));
        assertTrue(spread.flowKgPerS().p75() >= flowAt(heat.at(0.75 - 0.030)));
        assertTrue(spread.flowKgPerS().p75() <= flowAt(heat.at(0.75 + 0.030)));
    }

    @Test
    void percentilesStandInOrderAndInfluencesPointTheRightWay() {
        LoopSpread spread = spread(LIT, LoopDoubts.USUAL, 1000, 2);
        Percentiles flow = spread.flowKgPerS();
        assertTrue(flow.p5() < flow.p25()
                && flow.p25() < flow.p50()
                && flow.p50() < flow.p75()
                && flow.p75() < flow.p95());
        assertTrue(influence(spread, "coil heat").onFlow() > 0.5);
        assertTrue(influence(spread, "coil heat").onBoilMargin() < -0.5);
        assertTrue(influence(spread, "fittings").onFlow() < -0.1);
        assertTrue(influence(spread, "weather").onBoilMargin() < 0);
    }

    /** Each alone moves the flow by what its ends do; both point the way they should. */
    @Test
    void doubtOfFrictionAndOfTransitionEachSpreadTheFlow() {
        Doubt friction = LoopDoubts.USUAL.friction();
        Percentiles byFriction = spread(LIT, new LoopDoubts(NONE, NONE, NONE, NONE, friction, NONE, 0), 600, 2)
                .flowKgPerS();
        assertEquals(flowWith(friction.at(0.95), 1), byFriction.p5(), 0.003 * KNOWN.flowKgPerS());
        assertEquals(flowWith(friction.at(0.05), 1), byFriction.p95(), 0.003 * KNOWN.flowKgPerS());

        Doubt transition = LoopDoubts.USUAL.transition();
        Percentiles byTransition = spread(LIT, new LoopDoubts(NONE, NONE, NONE, NONE, NONE, transition, 0), 600, 2)
                .flowKgPerS();
        assertTrue(byTransition.p95() > byTransition.p5() * 1.002, byTransition.toString());

        LoopSpread usual = spread(LIT, LoopDoubts.USUAL, 1000, 2);
        assertTrue(influence(usual, "friction").onFlow() < 0);
        assertTrue(influence(usual, "transition").onFlow() > 0);
    }

    private static double flowWith(double frictionTimes, double transitionTimes) {
        return LIT.trimmed(new UncertaintyFactors(1, 1, 1, frictionTimes, transitionTimes))
                .search()
                .forward()
                .orElseThrow()
                .flowKgPerS();
    }

    @Test
    void aLoopThatMayBoilIsCounted() {
        Circuit weak = Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "10")
                .withLoopTube("EN1057 15x0.7")
                .withCoilHeatKW(20)
                .circuit(40);
        LoopSpread spread = spread(weak, LoopDoubts.USUAL, 100, 1);
        assertTrue(spread.boilsShare() > 0.5, spread.toString());
        assertEquals(100, spread.samples());
    }

    @Test
    void aStoppedSpreadTellsWhatItHas() {
        List<Integer> told = Collections.synchronizedList(new ArrayList<>());
        ProgressListener stops = new ProgressListener() {
            @Override
            public void done(int done, int of) {
                told.add(done);
            }

            @Override
            public boolean cancelled() {
                return told.size() >= 3;
            }
        };
        SearchOutcome<LoopSpread> outcome = LoopSpread.of(LIT, LoopDoubts.USUAL, new SpreadPlan(5000, 1, 1), stops);
        SearchOutcome.Cancelled<?> cancelled = assertInstanceOf(SearchOutcome.Cancelled.class, outcome);
        assertEquals(cancelled.done(), outcome.result().samples());
        assertEquals(5000, cancelled.of());
        assertTrue(cancelled.done() > 0 && cancelled.done() < 5000);
        assertTrue(outcome.result().flowKgPerS().p50() > 0);
    }

    @Test
    void progressEndsAtAll() {
        List<Integer> told = Collections.synchronizedList(new ArrayList<>());
        ProgressListener listens = new ProgressListener() {
            @Override
            public void done(int done, int of) {
                told.add(done);
            }
        };
        LoopSpread.of(LIT, LoopDoubts.USUAL, new SpreadPlan(300, 1, 2), listens);
        List<Integer> sorted = new ArrayList<>(told);
        Collections.sort(sorted);
        assertEquals(sorted, told);
        assertEquals(300, told.get(told.size() - 1));
    }

    private static LoopSpread spread(Circuit circuit, LoopDoubts doubts, int samples, int threads) {
        SearchOutcome<LoopSpread> outcome =
                LoopSpread.of(circuit, doubts, new SpreadPlan(samples, 7, threads), ProgressListener.NONE);
        assertInstanceOf(SearchOutcome.Finished.class, outcome);
        return outcome.result();
    }

    private static Influence influence(LoopSpread spread, String doubt) {
        return spread.influences().stream()
                .filter(one -> one.doubt().equals(doubt))
                .findFirst()
                .orElseThrow();
    }

    private static SteadyFlow at(double heatTimes) {
        double heatW = LIT.setting().firing().heatW() * heatTimes;
        return LIT.withHeatW(heatW).search().forward().orElseThrow();
    }

    private static double marginAt(double heatTimes) {
        return at(heatTimes).boilMargin().marginK();
    }

    private static double flowAt(double heatTimes) {
        return at(heatTimes).flowKgPerS();
    }
}
