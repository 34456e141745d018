package loftcoil.engine.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatedFlowReferenceTest {

    private static final Tube WIDE = TubeTable.require("tube", "EN1057 22x0.9");

    /**
     * IEC 60534-2-1 turns a flow coefficient Kv (m³/h of water at 1 bar) into a loss coefficient by ζ = N2 d⁴/Kv², d in mm,
     * N2 = 1.60e-3 (three digits; its table of constants, restated in public flow-coefficient libraries). Kv 1 is 16.67 L/min at
     * 100 kPa.
     */
    @ParameterizedTest
    @CsvSource({"1.0, 15x1.0", "0.6, 22x0.9", "2.5, 28x0.9"})
    void aValveByItsKvLosesWhatTheStandardSays(double kv, String size) {
        Tube tube = TubeTable.require("tube", "EN1057 " + size);
        double boreMm = tube.boreM() * 1000;

        double zeta = 1.60e-3 * Math.pow(boreMm, 4) / (kv * kv);

        assertEquals(zeta, new RatedFlow(kv * 1000 / 60, 100).lossK(tube), 0.005 * zeta);
    }

    /** What defines the rating: with only the tap in the way, its rated pressure gives its rated flow. */
    @ParameterizedTest
    @CsvSource({"7.5, 10", "15, 10", "12, 30"})
    void atItsRatedPressureATapPassesItsRatedFlow(double lPerMin, double kPa) {
        double headM = kPa * 1000 / (999.1 * 9.80665);
        SupplyPipe stub = SupplyPipe.of(WIDE, 0.01, Map.of());
        Outlet tap = new Outlet("tap", 0, new RatedFlow(lPerMin, kPa).lossK(WIDE));
        TapFlow.Runs runs =
                (TapFlow.Runs) GravitySupply.single(headM, 15, stub, tap).alone("tap");

        double before = runs.dynamicKPa();
        assertEquals(lPerMin * Math.sqrt(before / kPa), runs.flowLPerMin(), 1e-3 * lPerMin);
        // The jet and the way in take some 1.6 speed heads: up to 5 % of 10 kPa, half of that in flow.
        assertEquals(lPerMin, runs.flowLPerMin(), 0.03 * lPerMin);
    }

    /**
     * DIN 4109-1, as restated in public: Z 0.15, A 0.25, S 0.33, B 0.42, C 0.50, D 0.63 L/s at 0.3 MPa. The low-pressure rows:
     * 7.5 and 15 L/min at 0.1 bar (a trade page on the British requirement).
     */
    @ParameterizedTest
    @CsvSource({
        "mains tap class Z, 0.15, 300",
        "mains tap class A, 0.25, 300",
        "mains tap class S, 0.33, 300",
        "mains tap class B, 0.42, 300",
        "mains tap class C, 0.50, 300",
        "mains tap class D, 0.63, 300",
        "low-pressure tap 1/2 in, 0.125, 10",
        "low-pressure tap 3/4 in, 0.25, 10"
    })
    void theTableHoldsTheClassesAsPublished(String name, double lPerS, double kPa) {
        RatedFlow rated = TapClass.find(name).orElseThrow().rated();

        assertEquals(lPerS, rated.lPerMin() / 60, 1e-9);
        assertEquals(kPa, rated.kPa());
    }

    @Test
    void everyRowSaysWhereItIsFromAndNoneIsMissing() {
        assertEquals(8, TapClass.all().size());
        TapClass.all().forEach(one -> assertTrue(!one.source().isBlank(), one.name()));
    }

    @Test
    void whatIsOutsideItsRangeIsRefusedByItsField() {
        for (double bad : new double[] {0, -1, 201, Double.NaN}) {
            RefusedException flow = assertThrows(RefusedException.class, () -> new RatedFlow(bad, 10));
            assertEquals("lPerMin", flow.faults().get(0).path());
        }
        for (double bad : new double[] {0, 1001, Double.POSITIVE_INFINITY}) {
            RefusedException pressure = assertThrows(RefusedException.class, () -> new RatedFlow(10, bad));
            assertEquals("kPa", pressure.faults().get(0).path());
        }
    }
}
