package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColdNightTest {

    /** Coldest month -0.5 °C, rooms 19 °C. */
    private static final Design BOTHY = Example.orchardBothy();

    /**
     * Ten-year extremes of the ASHRAE Handbook 2009 and the coldest month's mean of the TMY3 year, as printed in the statistics of the
     * stations' weather files: San Francisco, Las Vegas, Newark, Willard (Illinois), Golden (Colorado).
     */
    @ParameterizedTest
    @CsvSource({"9.6, -0.1", "7.8, -7.4", "-2.7, -19.0", "-4.8, -28.4", "-1.3, -27.9"})
    void theGuessedNightIsWithinItsDoubtOfStations(double monthC, double tenYearsC) {
        assertEquals(tenYearsC, monthC - ColdNight.BELOW_MONTH_K, 11);
    }

    @Test
    void halfOfTheStationsAreColderThanTheGuess() {
        List<Double> below = List.of(9.7, 15.2, 16.3, 23.6, 26.6);
        assertEquals(below.get(2), ColdNight.BELOW_MONTH_K, 0.5);
    }

    @Test
    void whatIsSaidDecides() {
        assertFalse(ColdNight.of(BOTHY).isSaid());
        assertEquals(-16.5, ColdNight.of(BOTHY).nightC());
        ColdNight said = ColdNight.of(Changes.apply(BOTHY, "site.coldestNightC", "-9"));
        assertTrue(said.isSaid());
        assertEquals(-9, said.nightC());
    }

    /** EN 12831: a place's factor b = (room - place) / (room - outside) stays as the outside changes. */
    @Test
    void anUnheatedPlaceKeepsItsShareBetweenRoomsAndOutside() {
        ColdNight night = ColdNight.of(Changes.apply(BOTHY, "site.coldestNightC", "-10"));
        double share = (19 - 5.0) / (19 + 0.5);
        assertEquals(19 - share * (19 + 10), night.whereUsually(5), 1e-9);
        assertEquals(19, night.whereUsually(19));
        assertEquals(19, night.whereUsually(60), "what the flue warms is at room temperature with the fire out");
        assertEquals(-10, night.whereUsually(-0.5), "outdoors");
        assertEquals(-10, night.whereUsually(-3));
        assertEquals(-12, night.whereUsually(-12), "a place stated colder than the night stays so");
    }

    @Test
    void aMildNightWarmsNothing() {
        ColdNight mild = ColdNight.of(Changes.apply(BOTHY, "site.coldestNightC", "12"));
        assertEquals(5, mild.whereUsually(5));
        assertEquals(10, mild.emptyHouseC(10));
    }

    /** The house of the findings: eight kelvin colder, the tank in a loft of 5 °C. */
    @Test
    void aTankInAColdLoftFreezesInDays() {
        Design cold = Changes.apply(BOTHY, "tank.aroundC", "5");
        ColdNight.Frozen tank = new ColdNight(cold, -24.5, -8.5).tankFreezes().orElseThrow();
        assertTrue(tank.aroundC() < -2 && tank.aroundC() > -5, tank.toString());
        assertTrue(tank.zeroH() > 20 && tank.throughH() > tank.zeroH() + 100, tank.toString());
    }

    @Test
    void aBarePipeInTheFrostFreezesWithinANight() {
        Design outside = Changes.apply(Changes.apply(BOTHY, "hotLegs[1].aroundC", "0"), "site.coldestNightC", "-12");
        ColdNight.Frozen lagged = ColdNight.of(outside).firstLeg().orElseThrow();
        assertTrue(lagged.zeroH() > 0.5 && lagged.throughH() < 24, lagged.toString());
        Leg leg = outside.hotLegs().get(1);
        ColdNight.Frozen bare =
                ColdNight.of(outside).freezes(leg.withLagging(Optional.empty())).orElseThrow();
        assertTrue(bare.throughH() < 0.7 * lagged.throughH(), bare + " " + lagged);
        assertTrue(ColdNight.of(BOTHY).firstLeg().isEmpty());
    }
}
