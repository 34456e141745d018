package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** Whatever is moved, the pipes still lead from port to coil and from coil to port. */
class ChangedLoopLawTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static void closed(Design design) {
        double cold = design.coldLegs().stream().mapToDouble(Leg::riseM).sum();
        double hot = design.hotLegs().stream().mapToDouble(Leg::riseM).sum();
        assertEquals(design.coil().inletM() - design.tank().coldPortLevelM(), cold, 1e-9);
        assertEquals(design.tank().returnPortLevelM() - design.coil().outletM(), hot, 1e-9);
    }

    @Test
    void movingTheTankStretchesTheLongestRisesAndKeepsTheirLevelRun() {
        Design moved = Changes.apply(BOTHY, "tank.baseM", "2.7");
        assertEquals(-2.2, moved.coldLegs().get(0).riseM(), 1e-12);
        assertEquals(
                BOTHY.coldLegs().get(0).levelRunM(), moved.coldLegs().get(0).levelRunM(), 1e-12);
        assertEquals(BOTHY.coldLegs().get(1), moved.coldLegs().get(1));
        assertEquals(1.95, moved.hotLegs().get(0).riseM(), 1e-12);
    }

    @Test
    void aTankCanBeMovedUpAndDownAndBackAgain() {
        for (double baseM = 1.5; baseM <= 6; baseM += 0.25) {
            Design moved = BOTHY.withTankBaseM(baseM).withTankBaseM(2.2);
            assertEquals(
                    BOTHY.hotLegs().get(0).lengthM(), moved.hotLegs().get(0).lengthM(), 1e-9);
        }
    }

    @Test
    void aTankCanStandFarBelowTheCoil() {
        for (double baseM = -9; baseM <= 1.5; baseM += 0.25) {
            closed(BOTHY.withTankBaseM(baseM));
        }
    }

    @Test
    void movingTheCoilKeepsTheLoopClosed() {
        Design moved = Changes.apply(BOTHY, "coil.inletM", "0.1");
        assertEquals(-1.95, moved.coldLegs().get(0).riseM(), 1e-12);
        assertEquals(0.5, moved.coil().outletM(), 1e-12);
        closed(moved);
    }

    @Test
    void thePortsCanBeMovedAlongTheTank() {
        for (double portM = 0.1; portM <= 0.65; portM += 0.05) {
            closed(Changes.apply(BOTHY, "tank.returnPortM", Double.toString(portM)));
        }
        for (double portM = 0; portM < 0.35; portM += 0.05) {
            closed(Changes.apply(BOTHY, "tank.coldPortM", Double.toString(portM)));
        }
    }

    @Test
    void aTallerTankKeepsItsDistanceFromWaterlineToRim() {
        Design tall = Changes.apply(BOTHY, "tank.heightM", "1.2");
        assertEquals(1.16, tall.tank().waterlineM(), 1e-12);
        assertEquals(BOTHY.hotLegs(), tall.hotLegs());
    }

    @Test
    void aCoilPipedTheWrongWayRoundStaysWhereItIs() {
        Design turned = Changes.apply(BOTHY, "coil.ends", "the upper end");
        closed(turned);
        assertEquals(0.75, turned.coil().inletM(), 1e-12);
        assertEquals(0.35, turned.coil().outletM(), 1e-12);
        Design back = Changes.apply(turned, "coil.ends", "the lower end");
        closed(back);
        assertEquals(BOTHY.coil(), back.coil());
    }

    @Test
    void oneTubeForTheWholeLoop() {
        Design changed = Changes.apply(BOTHY, "loop.tube", "EN1057 28x0.9");
        assertEquals("EN1057 28x0.9", changed.coil().tube());
        assertTrue(changed.hotLegs().stream().allMatch(leg -> leg.tube().equals("EN1057 28x0.9")));
    }

    @Test
    void theSlopeSetIsThatOfTheFlattestPipeAndTheLoopStaysClosed() {
        for (double slope = -100; slope <= 500; slope += 20) {
            Design sloped = BOTHY.withLoopSlopeMmPerM(slope);
            closed(sloped);
            double least = Stream.concat(
                            sloped.coldLegs().stream().map(leg -> -leg.riseM() / leg.levelRunM()),
                            sloped.hotLegs().stream().map(leg -> leg.riseM() / leg.levelRunM()))
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElseThrow();
            assertEquals(slope, least * 1000, 1e-6);
        }
    }

    @Test
    void steepeningLeavesTheSteeperPipesAsTheyAre() {
        Design sloped = BOTHY.withLoopSlopeMmPerM(200);
        assertEquals(BOTHY.hotLegs(), sloped.hotLegs());
        assertEquals(
                BOTHY.coldLegs().get(1).levelRunM(), sloped.coldLegs().get(1).levelRunM(), 1e-9);
    }

    @Test
    void aSideOfOneLegHasNoSlopeToChoose() {
        Leg only = BOTHY.hotLegs().get(0).withRiseM(1.8).withLevelRunM(30);
        Design design = BOTHY.withLegs(BOTHY.coldLegs(), List.of(only));
        assertEquals(60, Slopes.leastMmPerM(design), 1e-9);
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Changes.apply(design, "loop.slopeMmPerM", "80"));
        assertEquals("loop.slopeMmPerM", refused.faults().get(0).path());
    }

    @Test
    void theLevelRunGoesIntoTheLegThatHasMostOfIt() {
        Design longer = Changes.apply(BOTHY, "hotLegs.runM", "4");
        closed(longer);
        assertEquals(4, longer.hotLegs().stream().mapToDouble(Leg::levelRunM).sum(), 1e-9);
        assertEquals(BOTHY.hotLegs().get(0), longer.hotLegs().get(0));
    }

    @Test
    void aLoopWhoseColdLegStandsBesideTheFlueStartsBackward() {
        Design swapped = Changes.apply(BOTHY, "loop.besideFlue", "the cold leg");
        assertEquals(60, swapped.coldLegs().get(0).aroundC());
        assertTrue(BOTHY.circuit(20).search().fromRest().orElseThrow().flowKgPerS() > 0);
        assertTrue(swapped.circuit(20).search().fromRest().orElseThrow().flowKgPerS() < 0);
        assertEquals(BOTHY, Changes.apply(swapped, "loop.besideFlue", "the hot leg"));
    }

    @Test
    void aValveNearlyShutAndAChokedJointSlowTheFlow() {
        double free = BOTHY.circuit(40).search().forward().orElseThrow().flowKgPerS();
        double open = flow(BOTHY.withValveOpening("fully open"));
        double half = flow(BOTHY.withValveOpening("half shut"));
        double nearly = flow(BOTHY.withValveOpening("three quarters shut"));
        assertTrue(free > open && open > half && half > nearly);
        assertTrue(free > flow(BOTHY.withChokedJoint(LoopValves.Joint.CHOKED.code())));
        assertEquals(free, flow(Changes.apply(BOTHY.withValveOpening("half shut"), "loop.valves", "0")), 1e-12);
    }

    private static double flow(Design design) {
        return design.circuit(40).search().forward().orElseThrow().flowKgPerS();
    }

    @Test
    void valvesAreCountedWhereverTheyStandAndKeepTheirNumberWhenTurned() {
        Design two = Changes.apply(BOTHY, "loop.valves", "2").withValveOpening("half shut");
        assertEquals(2, LoopValves.count(two));
        assertEquals(LoopValves.Opening.HALF_SHUT, LoopValves.opening(two));
        Design onHot = BOTHY.withLegs(
                BOTHY.coldLegs(),
                BOTHY.hotLegs().stream()
                        .map(leg ->
                                LegFields.TABLE.with(leg, LegFields.FITTINGS, Counts.with(leg.fittings(), "gate", 1)))
                        .toList());
        assertEquals("2", Changes.current(onHot, "loop.valves"));
        assertEquals(0, LoopValves.count(onHot.withValveOpening("no valve")));
    }
}
