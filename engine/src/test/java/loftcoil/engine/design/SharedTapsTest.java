package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.Branch;
import loftcoil.engine.supply.GravitySupply;
import loftcoil.engine.supply.Outlet;
import loftcoil.engine.supply.RatedFlow;
import loftcoil.engine.supply.SupplyPipe;
import loftcoil.engine.supply.TapFlow;
import loftcoil.engine.supply.Tee;
import org.junit.jupiter.api.Test;

/** Taps that share a trunk, taps by their rated flow and the loss of a mixing valve, as a design says them. */
class SharedTapsTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** Sink and tub of lesson 13's example behind 6 m of shared 22 mm tube, and a tap of its own. */
    private static Design shared() {
        return edited(
                """
                {"trunk": {"tube": "EN1057 22x0.9", "lengthM": 6, "fittings": {"elbow90": 3}},
                 "taps": [
                  {"name": "sink", "levelM": 1.05, "tube": "EN1057 22x0.9", "lengthM": 1.5,
                   "fittings": {"tee-run": 1, "elbow90": 2}, "outletK": 6},
                  {"name": "tub", "levelM": 0.65, "tube": "EN1057 22x0.9", "lengthM": 2.5,
                   "fittings": {"elbow90": 3}, "outletK": 4},
                  {"name": "hose", "levelM": 0.9, "tube": "EN1057 15x0.7", "lengthM": 7.5, "outletK": 10, "onTrunk": false}],
                 "use": []}
                """);
    }

    private static Design edited(String json) {
        return SafeBothy.merged(Example.orchardBothyJson(), json);
    }

    @Test
    void theTreeOfTheDesignIsTheOneBuiltByHand() {
        Tube copper = TubeTable.require("tube", "EN1057 22x0.9");
        Tee both = new Tee(List.of(
                new Branch(SupplyPipe.of(copper, 1.5, Map.of("tee-run", 1, "elbow90", 2)), new Outlet("sink", 1.05, 6)),
                new Branch(
                        SupplyPipe.of(copper, 2.5, Map.of("tee-branch", 1, "elbow90", 3)),
                        new Outlet("tub", 0.65, 4))));
        GravitySupply tree = new GravitySupply(
                2.86,
                60,
                new Branch(SupplyPipe.of(copper, 6, Map.of("elbow90", 3)).fromTank(), both));
        List<TapFlow> byHand = tree.open(Set.of("sink", "tub"));

        Design design = shared();
        List<TapFlow> open = design.allTapsOpen(60);

        for (int tap = 0; tap < 2; tap++) {
            assertEquals(byHand.get(tap).flowLPerMin(), open.get(tap).flowLPerMin(), 1e-9);
            String name = open.get(tap).name();
            assertEquals(
                    tree.alone(name).flowLPerMin(),
                    design.supply(design.taps().get(tap), 60).alone(name).flowLPerMin(),
                    1e-9);
            assertTrue(open.get(tap).flowLPerMin()
                    < design.supply(design.taps().get(tap), 60).alone(name).flowLPerMin());
        }
        double ownPipe = design.supply(design.taps().get(2), 60).alone("hose").flowLPerMin();
        assertEquals(ownPipe, open.get(2).flowLPerMin(), 1e-12);
        assertEquals(
                tree.standingM3("tub"), design.supply(design.taps().get(1), 60).standingM3("tub"), 1e-15);
    }

    @Test
    void withoutATrunkAllRunAsIfAlone() {
        List<TapFlow> open = BOTHY.allTapsOpen(60);

        IntStream.range(0, 3).forEach(tap -> {
            Tap one = BOTHY.taps().get(tap);
            assertEquals(
                    BOTHY.supply(one, 60).alone(one.name()).flowLPerMin(),
                    open.get(tap).flowLPerMin(),
                    1e-12);
        });
    }

    @Test
    void anUpperTapOnAThinTrunkIsRobbed() {
        Design thin = edited(
                """
                {"trunk": {"tube": "EN1057 15x0.7", "lengthM": 6},
                 "taps": [
                  {"name": "shower", "levelM": 2.3, "tube": "EN1057 15x0.7", "lengthM": 2, "outletK": 10},
                  {"name": "tub", "levelM": 0.4, "tube": "EN1057 22x0.9", "lengthM": 2, "outletK": 4}],
                 "use": []}
                """);

        assertEquals(TapFlow.Robbed.class, thin.allTapsOpen(60).get(0).getClass());
        assertTrue(thin.supply(thin.taps().get(0), 60).alone("shower").flowLPerMin() > 0);
    }

    /** A tap of 7.5 L/min at 10 kPa before it, behind a short wide pipe: 7.5 √(18/10) at 18 kPa. */
    @Test
    void aRatedTapRunsByTheRootOfItsPressure() {
        Design rated = Changes.apply(BOTHY, "taps.kind", "low-pressure tap 1/2 in");
        TapFlow.Runs sink = (TapFlow.Runs) rated.allTapsOpen(15).get(0);

        assertEquals(7.5 * Math.sqrt(sink.dynamicKPa() / 10), sink.flowLPerMin(), 1e-6);
        assertTrue(
                sink.flowLPerMin() > 9 && sink.flowLPerMin() < 7.5 * Math.sqrt(1.81 * 9.80665 / 10), sink.toString());
        assertEquals(BOTHY, Changes.apply(rated, "taps.kind", Changes.current(BOTHY, "taps.kind")));
    }

    @Test
    void aTapOfNamedClassIsTakenAtThreeBarWhereThePressureIsNotSaid() {
        Design said = Changes.apply(BOTHY, "taps[0].ratedLPerMin", "15");

        assertEquals(new RatedFlow(15, 300), said.taps().get(0).rated().orElseThrow());
        assertEquals("mains tap class A", Changes.current(said, "taps.kind"));
        assertEquals(15 * Math.sqrt(17.4 / 300), said.allTapsOpen(60).get(0).flowLPerMin(), 0.1);
    }

    @Test
    void aMixingValveTakesHead() {
        double without = BOTHY.allTapsOpen(60).get(0).flowLPerMin();
        Design usual = BOTHY.withTapMixer("set to 43 °C");
        Design wide = Changes.apply(Changes.apply(usual, "taps[0].mixerLPerMin", "50"), "taps[0].mixerKPa", "100");

        double usualFlow = usual.allTapsOpen(60).get(0).flowLPerMin();
        double wideFlow = wide.allTapsOpen(60).get(0).flowLPerMin();

        assertTrue(usualFlow < 0.4 * without && usualFlow > 0.2 * without, usualFlow + " of " + without);
        assertTrue(wideFlow > usualFlow && wideFlow < without, wideFlow + " L/min");
        // Alone with its valve at 10 kPa and more: no more than the valve alone would pass at all the head.
        assertTrue(usualFlow < 7.5 * Math.sqrt(1.81 * 9.80665 / 10), usualFlow + " L/min");
    }

    @Test
    void halfARatingAndATrunkThatIsNotThereAreRefusedByTheirPath() {
        assertRefused("taps[0].ratedLPerMin", "{\"taps\": [{\"ratedKPa\": 10%s");
        assertRefused("taps[0].mixerC", "{\"taps\": [{\"mixerLPerMin\": 10%s");
        assertRefused("taps[0].onTrunk", "{\"taps\": [{\"onTrunk\": true%s");
    }

    @Test
    void moreTapsThanATeeHasBranchesAreRefused() {
        StringBuilder taps = new StringBuilder();
        for (int tap = 0; tap < 21; tap++) {
            taps.append(tap == 0 ? "" : ", ")
                    .append("{\"name\": \"tap ")
                    .append(tap)
                    .append("\", \"levelM\": 1, \"tube\": \"EN1057 15x0.7\", \"lengthM\": 2, \"outletK\": 6}");
        }
        String json =
                "{\"trunk\": {\"tube\": \"EN1057 22x0.9\", \"lengthM\": 2}, \"use\": [], \"taps\": [" + taps + "]}";
        RefusedException refused = assertThrows(RefusedException.class, () -> edited(json));
        assertEquals("trunk: taps on it", refused.faults().get(0).path());
    }

    private static void assertRefused(String path, String start) {
        String tap =
                ", \"name\": \"sink\", \"levelM\": 1, \"tube\": \"EN1057 15x0.7\", \"lengthM\": 2, \"outletK\": 6}], \"use\": []}";
        RefusedException refused = assertThrows(RefusedException.class, () -> edited(String.format(start, tap)));
        assertEquals(path, refused.faults().get(0).path());
    }
}
