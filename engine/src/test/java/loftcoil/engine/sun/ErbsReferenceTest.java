package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ErbsReferenceTest {

    /** Clearness is printed to two digits; half a hundredth of it moves the diffuse fraction by this much. */
    private static final double PRINTED = 0.0101;

    @ParameterizedTest
    @CsvFileSource(resources = "madison-duffie-beckman-2-19-1.csv", useHeadersInDisplayName = true)
    void madison(
            int month, double outside, double ground, double albedo, double tilted, double clearness, double fraction) {
        // Duffie and Beckman, 4th ed., Example 2.19.1.
        double sunset = Extraterrestrial.sunsetHourAngleDeg(43, Declination.cooperDeg(Madison.MEAN_DAYS[month - 1]));
        assertEquals(fraction, Erbs.monthlyDiffuseFraction(clearness, sunset), PRINTED, "from memory");
        assertEquals(clearness, ground / outside, 0.00501);
    }
}
