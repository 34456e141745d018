package loftcoil.engine.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Textbook pipelines, end to end through the solver that serves every design. */
class GravitySupplyReferenceTest {

    private static final double BOOK_G = 9.81;

    private static TapFlow.Runs run(double waterlineM, double waterC, SupplyPipe pipe, Outlet outlet) {
        GravitySupply supply = new GravitySupply(waterlineM, waterC, new Branch(pipe, outlet));
        return assertInstanceOf(TapFlow.Runs.class, supply.alone(outlet.name()));
    }

    private static Tube tube(double boreM) {
        return new Tube("of the example", boreM + 0.004, 0.002);
    }

    /**
     * Torricelli; Cengel and Cimbala, Fluid Mechanics, discharge from a large tank: 5 m give 9.90 m/s (g 9.81). Example recalled,
     * recomputed √(2gh). A stub of pipe stands for the hole: its friction takes 0.1 %.
     */
    @Test
    void torricelli() {
        SupplyPipe stub = new SupplyPipe(tube(0.1), 0.01, 0, 0, Map.of());
        assertEquals(9.90, run(5, 20, stub, new Outlet("hole", 0, 0)).velocityMPerS(), 0.02);
    }

    /** ρgh with the density of the steam tables: a metre of water of 10 °C is 9.804 kPa. */
    @Test
    void aMetreOfWaterIsNinePointEightKilopascals() {
        SupplyPipe pipe = SupplyPipe.of(tube(0.02), 1, Map.of());
        assertEquals(9.804, run(1, 10, pipe, new Outlet("tap", 0, 1)).staticKPa(), 0.001);
    }

    /**
     * Cengel and Cimbala, Fluid Mechanics, ch. 8, "Gravity-driven water flow in a pipe" (ex. 8-8, 3rd ed.; recalled, recomputed):
     * water of 10 °C, 89 m of 5 cm cast iron, roughness 0.26 mm, K 0.5 + 2 × 0.3 + 0.2 + exit 1.06; between surfaces at 31.9 and
     * 4 m flow 6 L/s. Of the exit 1 is the velocity head that every outlet has.
     */
    @Test
    void sixLitresASecondBetweenTwoReservoirs() {
        SupplyPipe pipe = new SupplyPipe(tube(0.05), 89, 0.26e-3, 0.5 + 2 * 0.3 + 0.2, Map.of());
        TapFlow.Runs flow = run(4 + 27.9, 10, pipe, new Outlet("lower reservoir", 4, 0.06));
        assertEquals(6.0, flow.flowLPerMin() / 60, 0.005 * 6.0);
        assertEquals(3.06, flow.velocityMPerS(), 0.005 * 3.06);
        assertEquals(116_900, flow.reynolds(), 0.005 * 116_900);
    }

    /**
     * Cengel and Cimbala, ch. 8, "Effect of flushing on flow rate from a shower", part (a) (ex. 8-9, 3rd ed.; recalled, recomputed):
     * 200 kPa at the start of 11 m of 1.5 cm copper, shower 2 m higher, K 0.9 + 2 × 0.9 + 10 + 12, the jet's velocity head within the
     * shower's 12: 2.98 m/s, 0.53 L/s, Re 44 550. The pressure stands as a waterline p/ρg above the start.
     */
    @Test
    void showerLineOfCopper() {
        SupplyPipe pipe = new SupplyPipe(tube(0.015), 11, 1.5e-6, 0.9 + 2 * 0.9 + 10, Map.of());
        TapFlow.Runs flow = run(200_000 / (998 * BOOK_G), 20, pipe, new Outlet("shower", 2, 12 - 1));
        assertEquals(2.98, flow.velocityMPerS(), 0.005 * 2.98);
        assertEquals(0.53, flow.flowLPerMin() / 60, 0.005);
        assertEquals(44_550, flow.reynolds(), 0.005 * 44_550);
    }

    /**
     * Hagen and Poiseuille, with the jet's α = 2 exact: h = 32νLv/(gD²) + 2v²/2g, a quadratic in v. Any fluid text. Re stays
     * under 2000.
     */
    @ParameterizedTest
    @CsvSource({"0.05, 20", "0.2, 40", "0.5, 60", "0.01, 5"})
    void laminarFlowIsExact(double headM, double lengthM) {
        double g = 9.80665;
        double nu = loftcoil.engine.water.Water.viscosityPaS(15) / loftcoil.engine.water.Water.densityKgPerM3(15);
        double linear = 32 * nu * lengthM / (g * 0.01 * 0.01);
        double exact = g / 2 * (Math.sqrt(linear * linear + 4 * headM / g) - linear);
        SupplyPipe pipe = SupplyPipe.of(tube(0.01), lengthM, Map.of());
        TapFlow.Runs flow = run(headM, 15, pipe, new Outlet("end", 0, 0));
        assertTrue(flow.reynolds() < 2000, "Re " + flow.reynolds());
        assertEquals(exact, flow.velocityMPerS(), 1e-9 * exact);
    }

    /** Emptying by Torricelli in closed form: t = 2A/a √((1+K)/2g) (√h₁ − √h₂). Any fluid text. */

    /** EN 806-3:2006, table 2: a sink wants 0.15 L/s at least. 22 mm from a loft gives it, 15 mm with a stiff tap does not. */
    @Test
    void aSinkIsServedByWideCopperAndNotByNarrow() {
        double leastLPerMin = 0.15 * 60;
        assertTrue(loft("EN1057 22x0.9", 6).flowLPerMin() >= leastLPerMin);
        assertTrue(loft("EN1057 15x0.7", 40).flowLPerMin() < leastLPerMin);
    }

    private static TapFlow loft(String tube, double outletK) {
        SupplyPipe pipe = SupplyPipe.of(TubeTable.find(tube).orElseThrow(), 4, Map.of("elbow90", 5));
        return GravitySupply.single(2.86, 40, pipe, new Outlet("sink", 1.05, outletK))
                .alone("sink");
    }

    /** An installation sheet of a household machine asks for 10 psi (69 kPa): 7 m of head, which no loft has. */
    @Test
    void aMachineForMainsPressureIsRefusedByALoft() {
        InletNeed need = InletNeed.find("washing machine with inlets for mains").orElseThrow();
        assertEquals(10 * 6.894757, need.leastKPa(), 0.1);
        TapFlow flow = loft("EN1057 22x0.9", 6);
        InletVerdict.TooLittle verdict = assertInstanceOf(InletVerdict.TooLittle.class, need.against(flow));
        assertEquals(69 - flow.staticKPa(), verdict.shortKPa(), 1e-9);
        assertEquals(verdict.shortKPa() / 9.804, verdict.raiseM(), 0.01);
        InletNeed shower = InletNeed.find("shower rose by gravity").orElseThrow();
        assertInstanceOf(InletVerdict.Enough.class, shower.against(flow));
    }

    /** Plug: volume over flow. 5.5 m of 22 × 0.9 hold 1.76 L (EN 1057 dimensions). */
    @Test
    void waitForHotIsPipeVolumeOverFlow() {
        SupplyPipe pipe = SupplyPipe.of(TubeTable.find("EN1057 22x0.9").orElseThrow(), 5.5, Map.of());
        GravitySupply supply = GravitySupply.single(2.86, 50, pipe, new Outlet("tub", 0.65, 4));
        double litres = Math.PI / 4 * 2.02 * 2.02 * 550 / 1000;
        assertEquals(litres / 1000, supply.standingM3("tub"), 1e-12);
        HotWait wait = HotWait.of(supply.standingM3("tub"), 12, new HotWait.Warmth(50, 19));
        assertEquals(litres / 12 * 60, wait.seconds(), 1e-9);
        assertEquals(litres, wait.wastedL(), 1e-12);
        assertEquals(litres * 0.988 * 4180 * 31, wait.coolingJ(), 0.002 * wait.coolingJ());
    }
}
