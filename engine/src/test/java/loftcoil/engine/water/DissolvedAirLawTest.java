package loftcoil.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** What must hold of dissolved air whatever the numbers. */
class DissolvedAirLawTest {

    private static final double SEA = 101_325;

    @Test
    void warmerWaterHoldsLessAndDeeperWaterMore() {
        for (double tempC = 0; tempC < 99; tempC++) {
            assertTrue(DissolvedAir.mLPerL(tempC + 1, SEA) < DissolvedAir.mLPerL(tempC, SEA), tempC + " °C");
            assertTrue(DissolvedAir.mLPerL(tempC, SEA + 10_000) > DissolvedAir.mLPerL(tempC, SEA), tempC + " °C");
        }
    }

    @Test
    void boilingWaterHoldsNoneAndItsBubblesHaveNoBound() {
        double boilsC = Saturation.tempC(SEA);

        assertEquals(0, DissolvedAir.mLPerL(boilsC, SEA), 1e-3);
        assertEquals(0, DissolvedAir.oxygenMgPerL(105, SEA));
        assertEquals(Double.POSITIVE_INFINITY, DissolvedAir.bubbleSwell(105, SEA));
    }

    @Test
    void twiceTheAirPressureDissolvesTwiceTheAir() {
        double vapour = Saturation.pressurePa(40);
        double once = DissolvedAir.mLPerL(40, vapour + 80_000);

        assertEquals(2 * once, DissolvedAir.mLPerL(40, vapour + 160_000), 1e-9);
    }

    @Test
    void aBubbleOfColdAirHasTheSizeOfTheTables() {
        assertEquals(1, DissolvedAir.bubbleSwell(0, SEA + Saturation.pressurePa(0)), 1e-12);
    }

    @Test
    void gaugeForAbsolutePressureIsRefused() {
        RefusedException refused = assertThrows(RefusedException.class, () -> DissolvedAir.mLPerL(20, 20_000));

        assertEquals("pressurePa", refused.faults().get(0).path());
        assertThrows(RefusedException.class, () -> DissolvedAir.mLPerL(Double.NaN, SEA));
    }
}
