package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LegionellaDeathReferenceTest {

    /** A kill that every table below calls thorough: eight powers of ten. */
    private static final double THOROUGH = 8;

    /** WHO 2007 after Dennis et al., read as restated in public: sure of the numbers. */
    @Test
    void nineInTenAsTheHealthOrganizationHasIt() {
        assertEquals(2, LegionellaDeath.ninetyPercentMin(60), 1e-12);
        assertTrue(LegionellaDeath.ninetyPercentMin(50) >= 80, "80 to 124 min at 50 °C");
        assertTrue(LegionellaDeath.ninetyPercentMin(50) <= 124, "80 to 124 min at 50 °C");
    }

    /**
     * Stout et al. 1986, as cited in Legionella in the View of Specialists, page 222: eight powers of ten in 25 min at 60 °C.
     * Strains differ by half again either way at 50 °C (80 to 124 min), so ours may be off by a factor of two.
     */
    @Test
    void eightPowersOfTenAtSixtyDegrees() {
        double minutes = THOROUGH * LegionellaDeath.ninetyPercentMin(60);
        assertTrue(minutes >= 25 / 2.0 && minutes <= 25 * 2.0, minutes + " min");
    }

    /** Same book, page 222: tenfold in 5.29 K by its own set of data; ours is the line through the two points of WHO. */
    @Test
    void tenfoldInFiveToSixKelvin() {
        double kelvin = 10 / Math.log10(LegionellaDeath.ninetyPercentMin(50) / LegionellaDeath.ninetyPercentMin(60));
        assertEquals(5.29, kelvin, 0.8);
    }

    /** Restated tables of the trade (two pages read): dead within 2 min at 66 °C, 32 min at 60 °C, 5 to 6 h at 55 °C. */
    @ParameterizedTest
    @CsvSource({"66, 2", "60, 32", "55, 300"})
    void withinTheTimesOfTheTradesTables(double waterC, double mostMin) {
        double minutes = THOROUGH * LegionellaDeath.ninetyPercentMin(waterC);
        assertTrue(minutes <= mostMin, waterC + " °C: " + minutes + " min");
    }

    /** Above 70 °C "almost instantly" (restated in public): under five seconds for nine in ten. */
    @Test
    void atSeventyDegreesAlmostAtOnce() {
        assertTrue(LegionellaDeath.ninetyPercentMin(70) < 5.0 / 60);
    }

    @ParameterizedTest
    @ValueSource(doubles = {49.9, 70.1, Double.NaN})
    void outsideItsRangeItIsRefused(double waterC) {
        assertThrows(RefusedException.class, () -> LegionellaDeath.ninetyPercentMin(waterC));
    }
}
