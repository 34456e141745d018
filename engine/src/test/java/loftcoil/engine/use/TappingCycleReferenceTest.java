package loftcoil.engine.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commission Regulation (EU) No 814/2013, annex III, table 1. */
class TappingCycleReferenceTest {

    @ParameterizedTest
    @CsvSource({"S, 11, 2.100", "M, 23, 5.845"})
    void countAndSumAreThoseOfTheRegulation(String name, int count, double qRefKWh) {
        TappingCycle cycle = TappingCycle.require("cycle", name);
        assertEquals(count, cycle.tappings().size());
        assertEquals(qRefKWh, cycle.sumKWh(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "S, 0, 7.0, 0.105, 3, 25, 25",
        "S, 6, 12.75, 0.315, 4, 10, 55",
        "S, 9, 20.5, 0.42, 4, 10, 55",
        "S, 10, 21.5, 0.525, 5, 45, 45",
        "M, 1, 7.08333333, 1.4, 6, 40, 40",
        "M, 3, 8.01666667, 0.105, 3, 25, 25",
        "M, 9, 10.5, 0.105, 3, 10, 40",
        "M, 20, 20.5, 0.735, 4, 10, 55",
        "M, 22, 21.5, 1.4, 6, 40, 40"
    })
    void rowsOfTheTable(String name, int row, double at, double kWh, double flow, double useful, double peak) {
        Tapping tapping = TappingCycle.require("cycle", name).tappings().get(row);
        assertEquals(at, tapping.atH(), 1e-6);
        assertEquals(new Tapping(tapping.atH(), kWh, flow, useful, peak), tapping);
    }

    @Test
    void nothingIsDrawnBeforeSevenAndTimesRise() {
        for (String name : List.of("S", "M")) {
            double before = 7;
            for (Tapping tapping : TappingCycle.require("cycle", name).tappings()) {
                assertTrue(tapping.atH() >= before, name + " at " + tapping.atH());
                before = tapping.atH();
            }
        }
    }

    /** The draw-offs carry the heat of the cycle above 10 °C. M at 40 to 55 °C is about 180 L; S about 55 L. */
    @ParameterizedTest
    @CsvSource({"S, 2.100", "M, 5.845"})
    void drawOffsCarryTheHeatOfTheCycle(String name, double kWh) {
        double joules = TappingCycle.require("cycle", name).drawOffs("sink").stream()
                .mapToDouble(draw -> draw.wantedJ(10))
                .sum();
        assertEquals(kWh, joules / 3.6e6, 1e-9);
    }

    @Test
    void refusesACycleItDoesNotHave() {
        RefusedException refused = assertThrows(RefusedException.class, () -> TappingCycle.require("use.cycle", "Z"));
        assertEquals("use.cycle", refused.faults().get(0).path());
        assertEquals("one of S, M", refused.faults().get(0).allowed());
    }
}
