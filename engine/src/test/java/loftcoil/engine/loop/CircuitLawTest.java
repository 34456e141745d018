package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.water.Water;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Exact limits and conservation of the loop. */
class CircuitLawTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    @DisplayName("no height: no drive, no flow")
    void noHeight() {
        CircuitPlan flat = Loops.square(Loops.TUBE_22, 0, 2);
        FlowSearch search = Loops.lit(flat, 40, 500).search();
        assertEquals(List.of(), search.flows());
        Still still = assertInstanceOf(Still.class, search.circulation());
        assertEquals(0, still.bestDrivePa(), 1e-9);
    }

    @Test
    @DisplayName("no heat and no loss: no flow")
    void noHeat() {
        assertEquals(
                List.of(),
                Loops.lit(Loops.square(Loops.TUBE_22, 2, 1), 40, 0).search().flows());
    }

    /**
     * Laminar and constant properties: flow goes with the square root of the heat. Properties change over the rise of
     * 0.15 K by less than 2 % per kelvin (viscosity) times 0.15 K: half of that in the root's argument is 0.15 %.
     */
    @Test
    @DisplayName("twice the heat in laminar flow: root two times the flow")
    void rootOfHeat() {
        CircuitPlan plan = Loops.square(Loops.TUBE_22, 2, 1);
        SteadyFlow one = Loops.forward(plan, 40, 1);
        SteadyFlow two = Loops.forward(plan, 40, 2);
        assertTrue(two.reynolds() < 2000 && two.coilRiseK() < 0.3, "small and laminar: " + two);
        assertEquals(Math.sqrt(2), two.flowKgPerS() / one.flowKgPerS(), 0.0015 * Math.sqrt(2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 200, 2000, 6000})
    @DisplayName("perfect lagging: the coil's rise is heat over flow and specific heat")
    void perfectLagging(double heatW) {
        SteadyFlow flow = Loops.forward(Loops.square(Loops.TUBE_22, 2, 1), 30, heatW);
        // Specific heat of water is not constant: its mean over the rise is integrated from the formula itself.
        double meanHeat = new IterativeLegendreGaussIntegrator(8, 1e-12, 1e-12)
                        .integrate(
                                10_000,
                                Water::specificHeatJPerKgK,
                                flow.coil().startC(),
                                flow.coil().endC())
                / flow.coilRiseK();
        assertEquals(heatW / (flow.flowKgPerS() * meanHeat), flow.coilRiseK(), 1e-6 * flow.coilRiseK());
        assertEquals(30, flow.coil().startC(), 1e-12);
    }

    @Test
    @DisplayName("heat into the coil = heat lost + heat into the tank, within a millionth")
    void energyBalance() {
        for (double tankC : new double[] {5, 20, 40, 60, 80}) {
            for (SteadyFlow flow : BOTHY.circuit(tankC).search().flows()) {
                HeatBook heat = flow.heat();
                assertEquals(heat.coilW(), heat.lostW() + heat.tankW(), 1e-6 * heat.coilW());
            }
            SteadyFlow night = BOTHY.circuitFireOut(tankC).search().fromRest().orElseThrow();
            assertEquals(
                    0,
                    night.heat().lostW() + night.heat().tankW(),
                    1e-6 * Math.abs(night.heat().lostW()));
        }
    }

    /** The loss of one leg integrated anew along it, with the loss formula itself at every point. */
    @Test
    @DisplayName("a leg's loss is the loss formula summed along it, within 0.5 %")
    void legLoss() {
        Circuit circuit = BOTHY.circuit(70);
        SteadyFlow flow = circuit.search().forward().orElseThrow();
        Pipe leg = circuit.plan().hotLegs().get(1);
        LegEnds ends = flow.legs().get(4);
        double mean = (ends.startC() + ends.endC()) / 2;
        double byHand = PipeLoss.wPerMK(leg.tube(), leg.lagging(), mean, leg.aroundC())
                * leg.lengthM()
                * (mean - leg.aroundC());
        assertEquals(byHand, ends.lossW(), 0.005 * byHand);
    }

    @Test
    @DisplayName("drive and resistance balance at every flow found")
    void balance() {
        for (SteadyFlow flow : BOTHY.circuit(40).search().flows()) {
            double forward = Math.signum(flow.flowKgPerS()) * flow.frictionPa();
            assertEquals(forward, flow.drivePa(), 1e-6 * flow.frictionPa());
        }
    }

    /** Drive worked out by hand from the temperatures told, cold and hot column over one height. */
    @Test
    @DisplayName("drive is the weight difference of the two columns")
    void driveByHand() {
        SteadyFlow flow = Loops.forward(Loops.square(Loops.TUBE_22, 2, 1), 40, 1500);
        double byHand = 9.80665
                * 2
                * (Water.densityKgPerM3(40) - Water.densityKgPerM3(flow.coil().endC()));
        assertEquals(byHand, flow.drivePa(), 1e-6 * byHand);
    }

    @Test
    @DisplayName("the loop in a mirror runs the other way, just as fast")
    void mirror() {
        CircuitPlan plan = Loops.square(Loops.TUBE_22, 2, 1);
        List<SteadyFlow> flows = Loops.lit(plan, 40, 800).search().flows();
        List<SteadyFlow> mirrored =
                Loops.lit(Loops.mirrored(plan), 40, 800).search().flows();
        assertEquals(2, flows.size());
        assertEquals(2, mirrored.size());
        for (int i = 0; i < 2; i++) {
            assertEquals(-flows.get(i).flowKgPerS(), mirrored.get(1 - i).flowKgPerS(), 1e-9);
        }
    }

    @Test
    @DisplayName("a taller loop is never slower")
    void taller() {
        double before = 0;
        for (double heightM = 0.2; heightM < 6; heightM += 0.1) {
            // The same length of tube, so that only the height changes.
            double flow = Loops.forward(Loops.square(Loops.TUBE_22, heightM, 14 - 2 * heightM), 40, 1000)
                    .flowKgPerS();
            assertTrue(flow >= before, "at " + heightM + " m");
            before = flow;
        }
    }

    @Test
    @DisplayName("rises that close only to the millimetre do not become a drive")
    void roundedRises() {
        SteadyFlow exact = BOTHY.circuit(40).search().forward().orElseThrow();
        Design rounded = BOTHY.withLegs(
                BOTHY.coldLegs(),
                List.of(BOTHY.hotLegs().get(0), BOTHY.hotLegs().get(1).withRiseM(0.3545)));
        SteadyFlow off = rounded.circuit(40).search().forward().orElseThrow();
        // 4.5 mm of 2.2 m is 0.2 % of the height; as a column of its own it would be a third of the drive.
        assertEquals(exact.flowKgPerS(), off.flowKgPerS(), 0.003 * exact.flowKgPerS());
    }
}
