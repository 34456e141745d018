package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DaySplitReferenceTest {

    @Test
    void oneToTwoInMadisonOnThe23rdOfAugust() {
        // Duffie and Beckman, 4th ed., Example 2.13.2 (from memory, recomputed): ratio 0.118, 31.4 MJ/m² gives 3.7
        // MJ/m².
        double sunset = Extraterrestrial.sunsetHourAngleDeg(43, Declination.cooperDeg(235));
        double ratio = DaySplit.globalPerHour(22.5, sunset);
        assertEquals(0.118, ratio, 0.001);
        assertEquals(3.7, 31.4 * ratio, 0.05);
    }

    @Test
    void noonShares() {
        // Equations 2.13.2 and 2.13.4 worked by hand at the equinox: pi/24 = 0.130900 of the diffuse in the noon hour,
        // a = 0.409 + 0.5016 x 0.5 = 0.6598, b = 0.6609 - 0.4767 x 0.5 = 0.42255.
        assertEquals(0.130900, DaySplit.diffusePerHour(0, 90), 1e-6);
        assertEquals(0.130900 * 1.08235, DaySplit.globalPerHour(0, 90), 1e-6);
    }
}
