package loftcoil.engine.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DemandReferenceTest {

    /** From memory: Energy Saving Trust for Defra, 2008: 46 + 26 N; the sample's mean of 122 L/day lies at about three people. */
    @Test
    void householdsFromMemory() {
        assertEquals(72, Demand.householdLPerDay(1));
        assertEquals(122, Demand.householdLPerDay(3), 18);
    }

    /**
     * SIA 385/2, planning values for each person and day at 10/60 °C and 10/45 °C, and the worked example 50 / (45 − 10) × 40 =
     * 57 L, as reprinted in the guide "Der Heizkompass" (Energie Schweiz, 2012). Printed to whole litres.
     */
    @ParameterizedTest
    @CsvSource({"SIMPLE, 60, 40", "SIMPLE, 45, 57", "MEDIUM, 60, 45", "MEDIUM, 45, 64", "HIGH, 60, 55", "HIGH, 45, 79"})
    void planningValuesOfSia385(Demand.Comfort comfort, double hotC, double litres) {
        assertEquals(litres, Demand.plannedLPerPersonDay(comfort, hotC, 10), 0.5);
    }

    @Test
    void refusesHouseholdsThatCannotBe() {
        assertThrows(RefusedException.class, () -> Demand.householdLPerDay(0));
        assertThrows(RefusedException.class, () -> Demand.plannedLPerPersonDay(Demand.Comfort.HIGH, Double.NaN, 10));
    }

    @Test
    void routineGrowsWithPeopleAndStaysInOrder() {
        List<DrawOff> one = WashRoutine.day(1, "sink", "tub");
        List<DrawOff> three = WashRoutine.day(3, "sink", "tub");
        assertEquals(4, one.size());
        assertEquals(8, three.size());
        for (int i = 1; i < three.size(); i++) {
            assertTrue(three.get(i).atH() >= three.get(i - 1).atH());
        }
        assertEquals(3, three.stream().filter(draw -> draw.tap().equals("tub")).count());
        assertEquals(
                50,
                WashRoutine.day(50, "sink", "tub").stream()
                        .filter(d -> d.tap().equals("tub"))
                        .count());
    }

    @Test
    void refusesADrawOffNamingEveryFault() {
        RefusedException refused = assertThrows(RefusedException.class, () -> new DrawOff(24, -1, Double.NaN, "sink"));
        assertEquals(
                List.of("atH", "litres", "mixedC"),
                refused.faults().stream().map(fault -> fault.path()).toList());
    }
}
