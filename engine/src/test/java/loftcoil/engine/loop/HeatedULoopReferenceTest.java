package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loftcoil.engine.tank.WaterHeat;
import org.junit.jupiter.api.Test;

/**
 * A U of tube open to a reservoir of one temperature, its horizontal leg heated at the rate Q1 and one upright leg at Q2: Bau and
 * Torrance, Journal of Fluid Mechanics 109 (1981) 417, abstract. Found there, by experiment and by a one-dimensional march: heat that
 * favours the ascending leg gives a stable flow; heat that favours the descending one too while Q1/Q2 is above a critical value, below
 * which the flow swings more and more until it turns round, and is steady then. The abstract gives neither sizes nor the critical value:
 * what is held here is which of the three happens. In this loop of our own the critical value lies between 0.35 and 0.4.
 */
class HeatedULoopReferenceTest {

    private static final double RESERVOIR_C = 20;
    private static final double WATT = 300;
    private static final double STEP_S = 0.2;

    private static final int DESCENDING = 0;
    private static final int HORIZONTAL = 1;
    private static final int ASCENDING = 2;

    private final WarmingLoop loop = uLoop();

    @Test
    void heatInTheAscendingLegGivesASteadyFlow() {
        List<Double> flow = march(ASCENDING, 0, 3600);
        assertSteady(flow, 1);
    }

    @Test
    void muchHeatInTheHorizontalLegHoldsTheFlowAgainstHeatInTheDescendingOne() {
        march(ASCENDING, 1, 1200);
        List<Double> flow = march(DESCENDING, 3, 3600);
        assertSteady(flow, 1);
    }

    @Test
    void littleHeatInTheHorizontalLegMakesItSwingMoreAndMoreAndTurn() {
        march(ASCENDING, 1, 600);
        march(DESCENDING, 3, 600);
        for (double ratio : new double[] {1, 0.6, 0.5, 0.45, 0.4}) {
            List<Double> troughs = troughs(march(DESCENDING, ratio, 5400));
            assertTrue(
                    troughs.get(troughs.size() - 1) > troughs.get(0), "above the critical ratio swings die: " + ratio);
        }
        List<Double> flow = march(DESCENDING, 0.35, 5400);
        int turned = 0;
        while (turned < flow.size() && flow.get(turned) > 0) {
            turned++;
        }
        assertTrue(turned < flow.size(), "it turns round");
        List<Double> troughs = troughs(flow.subList(0, turned));
        assertTrue(troughs.size() >= 10, "it swings before it turns: " + troughs);
        for (int i = 1; i < troughs.size(); i++) {
            assertTrue(troughs.get(i) < troughs.get(i - 1), "each swing is wider: " + troughs);
        }
        assertSteady(flow, -1);
    }

    private static List<Double> troughs(List<Double> flow) {
        List<Double> troughs = new ArrayList<>();
        for (int i = 1; i + 1 < flow.size(); i++) {
            if (flow.get(i) < flow.get(i - 1) && flow.get(i) <= flow.get(i + 1)) {
                troughs.add(flow.get(i));
            }
        }
        return troughs;
    }

    /** The last ten minutes, sampled each second. */
    private static void assertSteady(List<Double> flow, int direction) {
        List<Double> late = flow.subList(flow.size() - 600, flow.size());
        double least = late.stream().mapToDouble(f -> f).min().orElseThrow();
        double most = late.stream().mapToDouble(f -> f).max().orElseThrow();
        assertTrue(direction * least > 0.001, "flow " + least);
        assertEquals(least, most, 0.001 * Math.abs(most));
    }

    /** Flow at each second, kg/s, with Q1 so many times Q2. */
    private List<Double> march(int upright, double ratio, double seconds) {
        double density = LiquidTable.WATER.densityKgPerM3(RESERVOIR_C);
        double perStepJ = WATT * STEP_S / (1 + ratio);
        List<Double> flow = new ArrayList<>();
        int aSecond = (int) Math.rint(1 / STEP_S);
        for (int step = 1; step <= Math.rint(seconds / STEP_S); step++) {
            loop.push(STEP_S, density);
            loop.fire(upright, perStepJ);
            loop.fire(HORIZONTAL, ratio * perStepJ);
            loop.carry(STEP_S, 0, WaterHeat.jPerKg(RESERVOIR_C));
            if (step % aSecond == 0) {
                flow.add(loop.flowKgPerS());
            }
        }
        return flow;
    }

    private static WarmingLoop uLoop() {
        CircuitPlan plan = new CircuitPlan(
                new LoopHeights(1, 1, 1.2),
                List.of(new Pipe("left", Loops.TUBE_22, 1, -1, Map.of(), Loops.THICK, RESERVOIR_C)),
                new Pipe("below", Loops.TUBE_22, 0.5, 0, Map.of(), Loops.THICK, RESERVOIR_C),
                List.of(new Pipe("right", Loops.TUBE_22, 1, 1, Map.of(), Loops.THICK, RESERVOIR_C)),
                LoopKind.IDEAL);
        return Circuit.of(plan, new Setting(RESERVOIR_C, 0, Firing.lit(WATT)))
                .warming(new MarchDetail(0.02, 6, 4, 1, 0));
    }
}
