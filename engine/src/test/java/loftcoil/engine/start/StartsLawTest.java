package loftcoil.engine.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.loop.MarchDetail;
import loftcoil.engine.loop.WarmingLoop;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Starts: their account closes, finer steps do not change them, and what is known to go wrong goes wrong. */
class StartsLawTest {

    private static final OptionalDouble HOT = OptionalDouble.of(75);

    @Test
    void theAccountClosesWithCounterflowAndSteam() {
        Design design = SafeBothy.with("/coil/heatKW", "6");
        WarmingLoop loop = design.circuit(60).warming(MarchDetail.LONG.withCounterflow(1));
        double before = loop.heldJ();
        double density = Water.densityKgPerM3(60);
        for (double at = 0; at < 3600; ) {
            double step = Math.min(2, loop.longestStepS());
            // A shut valve for ten minutes: it boils, and counterflow alone carries heat.
            if (at < 600) {
                loop.stop();
            } else {
                loop.push(step, density);
            }
            loop.carry(step, 6000, WaterHeat.jPerKg(60));
            at += step;
        }
        assertTrue(loop.steamJ() > 0, "it boils");
        double gap = loop.coilJ() - (loop.heldJ() - before) - loop.lostJ() - loop.steamJ() - loop.portsJ();
        assertEquals(0, gap, 1e-6 * loop.coilJ());
    }

    @Test
    void aCoilThatClimbsStartsSurely() {
        Starts starts = Starts.of(SafeBothy.design(), HOT).orElseThrow();
        assertEquals(Sureness.SURE, starts.sureness());
        assertEquals(30, starts.tried().size(), "three tanks, three rests, three counterflows, and from cold");
        for (Start start : starts.tried()) {
            assertEquals(StartEnd.FORWARD, start.ends());
            assertEquals(1, start.ofSteady(), 0.01, "it comes to the flow of the steady search");
        }
    }

    @Test
    void aLevelCoilOnAHotTankFails() {
        Starts starts = Starts.of(levelCoil(), OptionalDouble.of(85)).orElseThrow();
        assertEquals(Sureness.FAILS, starts.sureness());
        Start worst = starts.failing().orElseThrow();
        assertTrue(worst.bad() && worst.firstBoilingMin().isPresent(), worst.toString());
    }

    @Test
    void aNarrowColdLegUnderAWideHotOneStopsItselfOnAHotTankAndOneBoreCuresIt() {
        Design narrow = bores("EN1057 15x0.7", "EN1057 28x0.9");
        assertEquals(Sureness.FAILS, Starts.of(narrow, HOT).orElseThrow().sureness());
        Design even = bores("EN1057 28x0.9", "EN1057 28x0.9");
        assertTrue(Starts.of(even, HOT).orElseThrow().sureness() != Sureness.FAILS);
    }

    @Test
    void aStartDrawnIsTheOneThatIsJudged() {
        StartTrace trace = StartTrace.of(SafeBothy.design(), 60, 1);
        Start judged = Starts.of(SafeBothy.design(), HOT).orElseThrow().tried().stream()
                .filter(start -> start.tankC() == 60
                        && start.gapH().equals(OptionalDouble.of(1))
                        && start.counterflow() == Counterflow.SOME)
                .findFirst()
                .orElseThrow();
        assertEquals(judged.hottestC(), trace.start().hottestC(), 0.5);
        assertEquals(judged.ends(), trace.start().ends());
        StartMoment tenth = trace.moments().get(60);
        assertEquals(10, tenth.minute(), 1e-6);
        assertEquals(tenth.flowLPerMin(), trace.flowLPerMinAt(10));
        assertEquals(tenth.hotterEndC(), trace.coilCAt(10.05));
        StartMoment last = trace.moments().get(trace.moments().size() - 1);
        assertEquals(last.flowLPerMin(), trace.flowLPerMinAt(1000), "it stays as it settled");
    }

    @Test
    void withoutHeatThereIsNoStart() {
        assertTrue(Starts.of(SafeBothy.with("/coil/heatKW", "0"), HOT).isEmpty());
    }

    @Test
    void aTankAtItsBoilingPointIsStartedJustBelow() {
        List<Start> tried = Starts.of(SafeBothy.design(), OptionalDouble.of(110))
                .orElseThrow()
                .tried();
        assertEquals(97, tried.stream().mapToDouble(Start::tankC).max().orElseThrow(), 1, "98 °C at 620 m");
    }

    @Test
    void halfCellsAndHalfStepsChangeFewEndings() {
        halved(4, 0.03);
    }

    @Test
    @Tag("thorough")
    void halfCellsAndHalfStepsChangeUnderTwoPerCentOfManyEndings() {
        halved(60, 0.02);
    }

    private static void halved(int designs, double most) {
        int changed = 0;
        int all = 0;
        for (Design design : RandomLoops.some(designs, 20261129)) {
            List<Start> usual =
                    Starts.of(design, HOT, MarchDetail.LONG).orElseThrow().tried();
            List<Start> fine = Starts.of(design, HOT, MarchDetail.LONG.halved())
                    .orElseThrow()
                    .tried();
            for (int i = 0; i < usual.size(); i++) {
                all++;
                changed += usual.get(i).ends() == fine.get(i).ends() ? 0 : 1;
            }
        }
        assertTrue(changed <= most * all, changed + " of " + all + " endings changed");
    }

    /** The bothy with both ends of its coil at 0.55 m. */
    private static Design levelCoil() {
        return SafeBothy.edited(List.of(
                "/coil/inletM",
                "0.55",
                "/coil/outletM",
                "0.55",
                "/coldLegs/0/riseM",
                "-1.5",
                "/hotLegs/0/riseM",
                "1.65",
                "/hotLegs/0/lengthM",
                "1.7"));
    }

    private static Design bores(String cold, String hot) {
        return SafeBothy.edited(List.of(
                "/coldLegs/0/tube",
                "\"" + cold + "\"",
                "/coldLegs/1/tube",
                "\"" + cold + "\"",
                "/coil/tube",
                "\"" + hot + "\"",
                "/hotLegs/0/tube",
                "\"" + hot + "\"",
                "/hotLegs/1/tube",
                "\"" + hot + "\""));
    }

    /**
     * Every design is started on a tank that is as hot at the bottom as its hottest water. On one in layers the column beside the loop is
     * heavier and cooler water comes in: of loops that start on the uniform one none fails on layers as hot at the top.
     */
    @Test
    void aTankAsHotBelowAsAboveIsTheGraverCase() {
        layersAreNoGraver(4);
    }

    @Test
    @Tag("thorough")
    void aTankAsHotBelowAsAboveIsTheGraverCaseOnManyLoops() {
        layersAreNoGraver(60);
    }

    private static void layersAreNoGraver(int loops) {
        double hotC = 70;
        int uniform = 0;
        int layered = 0;
        List<String> layersAlone = new ArrayList<>();
        for (Design design : RandomLoops.some(loops, 20261131)) {
            boolean fails = Starts.onLayers(design, hotC, hotC).failing().isPresent();
            uniform += fails ? 1 : 0;
            for (double coolerK : new double[] {10, 40}) {
                boolean inLayers = Starts.onLayers(design, hotC - coolerK, hotC).failing().isPresent();
                layered += inLayers ? 1 : 0;
                if (inLayers && !fails) {
                    layersAlone.add(coolerK + " K cooler below: " + design);
                }
            }
        }
        assertEquals(List.of(), layersAlone);
        int failing = uniform;
        int inLayers = layered;
        assertTrue(
                failing > 0 && inLayers < 2 * failing, () -> failing + " fail on one temperature, " + inLayers + " of two sorts of layers");
    }
}
