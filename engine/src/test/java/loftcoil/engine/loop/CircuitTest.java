package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.water.Saturation;
import org.junit.jupiter.api.Test;

class CircuitTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void tankBelowTheCoilStandsStillAndSaysWhyAndWhatIsDangerous() {
        FlowSearch search = BOTHY.withTankBaseM(-1.5).circuit(40).search();
        Still still = assertInstanceOf(Still.class, search.circulation());
        assertFalse(search.circulates());
        assertTrue(still.words().contains("does not circulate"), still.words());
        assertEquals("stands still", search.why());
        assertEquals("", BOTHY.circuit(40).search().why());
        assertTrue(still.words().contains("0.35 to 0.75 m"), still.words());
        assertTrue(still.words().contains("dangerous"), still.words());
    }

    @Test
    void tooMuchHeatForANarrowTubeBoilsAndSaysWhere() {
        Design narrow = Changes.apply(BOTHY, "fire.burnKgPerH", "6")
                .withLoopTube("EN1057 15x0.7")
                .withCoilHeatKW(12);
        Boils boils = assertInstanceOf(Boils.class, narrow.circuit(60).search().circulation());
        assertTrue(boils.frictionPa() > boils.drivePa() && boils.drivePa() > 0, boils.toString());
        assertTrue(boils.at().marginK() < 1e-6, boils.toString());
        assertTrue(boils.words().contains("boils"), boils.words());
        assertEquals("boils", narrow.circuit(60).search().why());
        assertTrue(boils.words().contains(boils.at().where()), boils.words());
    }

    /** The outlet's boiling point by hand: column of tank water above it, air pressure at the altitude. */
    @Test
    void boilingPointCountsTheColumnAboveAndTheAltitude() {
        Circuit circuit = Changes.apply(BOTHY, "site.altitudeM", "3000").circuit(40);
        double depth = BOTHY.tank().waterlineLevelM() - BOTHY.coil().outletM();
        // 70 109 Pa at 3000 m: ICAO standard atmosphere; 992.2 kg/m³: IAPWS SR6-08 at 40 °C.
        assertEquals(
                Saturation.tempC(70_109 + 992.2 * 9.80665 * depth),
                circuit.boilingC(BOTHY.coil().outletM()),
                0.01);
    }

    @Test
    void higherUpTheMarginIsLess() {
        double low = Changes.apply(BOTHY, "site.altitudeM", "0")
                .circuit(40)
                .search()
                .forward()
                .orElseThrow()
                .boilMargin()
                .marginK();
        double high = Changes.apply(BOTHY, "site.altitudeM", "3000")
                .circuit(40)
                .search()
                .forward()
                .orElseThrow()
                .boilMargin()
                .marginK();
        assertTrue(high < low - 9, low + " and " + high);
    }

    @Test
    void anInletHotterThanAnyBoilingPointIsRefusedByName() {
        RefusedException refused = assertThrows(RefusedException.class, () -> BOTHY.circuit(98.5));
        assertEquals(
                List.of("tankC"), refused.faults().stream().map(Fault::path).toList());
    }

    @Test
    void bothDirectionsAreFoundAndMarked() {
        List<SteadyFlow> flows = BOTHY.circuit(40).search().flows();
        assertEquals(2, flows.size());
        assertTrue(flows.get(0).flowKgPerS() < 0 && flows.get(0).stable());
        assertTrue(flows.get(1).flowKgPerS() > 0 && flows.get(1).stable());
        assertTrue(flows.get(0).coil().startC() > flows.get(0).coil().endC(), "backward water is hot at the inlet end");
    }

    @Test
    void fireOutTheLoopRunsTheWayItsStandingWaterPushes() {
        FlowSearch night = BOTHY.circuitFireOut(60).search();
        SteadyFlow flow = night.fromRest().orElseThrow();
        assertEquals(Math.signum(night.staticDrivePa()), Math.signum(flow.flowKgPerS()));
        assertTrue(-flow.heat().tankW() > 0, "the tank cools");
    }

    @Test
    void fireOutAndTankAsWarmAsTheRoomNothingMoves() {
        assertTrue(BOTHY.withLoopLaggingMm(0)
                .circuitFireOut(19)
                .search()
                .fromRest()
                .isEmpty());
    }

    @Test
    void aLoopAboveTheWaterlineIsTold() {
        assertEquals(0, BOTHY.circuit(40).aboveWaterlineM(), 1e-12);
        Design high = BOTHY.withLegs(
                BOTHY.coldLegs(),
                List.of(
                        BOTHY.hotLegs().get(0).withRiseM(2.5),
                        BOTHY.hotLegs().get(1).withRiseM(-0.7)));
        assertEquals(0.75 + 2.5 - 2.86, high.circuit(40).aboveWaterlineM(), 1e-9);
    }

    @Test
    void everyFaultOfAPlanIsToldAtOnce() {
        Pipe bad = new Pipe("a", Loops.TUBE_22, 1, -2, Map.of("elbw90", 1), new Lagging("wool", 0.02), Double.NaN);
        Pipe coil = new Pipe("coil", Loops.TUBE_22, -1, 0, Map.of(), Lagging.NONE, 20);
        CircuitPlan plan =
                new CircuitPlan(new LoopHeights(2, 2.3, Double.NaN), List.of(bad), coil, List.of(bad), LoopKind.REAL);
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Circuit.of(plan, new Setting(-5, 9000, Firing.lit(-1))));
        assertTrue(
                refused.faults().stream()
                        .map(Fault::path)
                        .collect(Collectors.toSet())
                        .containsAll(List.of(
                                "a.riseM",
                                "a.fittings",
                                "a.lagging.material",
                                "a.aroundC",
                                "coil.lengthM",
                                "waterlineM",
                                "altitudeM",
                                "tankC",
                                "heatW")),
                refused.getMessage());
    }

    /** Water without any push stays where it is, though a flow could be kept going. */
    @Test
    void withoutAnyPushNothingStarts() {
        FlowSearch night = Changes.apply(Example.orchardBothy(), "loop.besideFlue", "the cold leg")
                .circuit(20)
                .search();
        assertTrue(night.backward().isPresent());
        assertTrue(night.fromRest().isPresent());
        assertEquals(Optional.empty(), new FlowSearch(night.flows(), night.circulation(), 0).fromRest());
    }
}
