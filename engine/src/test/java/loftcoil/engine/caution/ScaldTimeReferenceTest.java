package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contact times against the published ones. */
class ScaldTimeReferenceTest {

    /**
     * US CPSC publication 5098, read as restated in public by several pages: sure. Temperatures there in °F. Never longer, and where
     * no leaflet is shorter the same.
     */
    @ParameterizedTest
    @CsvSource({"120, 300, 300", "130, 30, 30", "140, 6, 5", "150, 2, 1.5"})
    void adultsNoLongerThanTheConsumerProductSafetyCommissionHasIt(double fahrenheit, double seconds, double shortest) {
        double ours = at(Skin.ADULT, fahrenheit);
        assertTrue(ours <= seconds, ours + " s");
        assertEquals(shortest, ours, 0.01 * shortest);
    }

    /** Safety leaflet of a trade body, read as restated in public: soft. */
    @ParameterizedTest
    @CsvSource({"120, 240", "140, 1", "150, 0.5"})
    void infantsAsATradeLeafletHasIt(double fahrenheit, double seconds) {
        assertEquals(seconds, at(Skin.INFANT, fahrenheit), 0.04 * seconds);
    }

    /**
     * A second table, of burn-prevention leaflets (a children's hospital among them), read in public; it holds temperatures
     * between the points of the first. Where both have a value they differ by up to a third (150 °F: 2 s and 1.5 s), and the
     * shorter is taken.
     */
    @ParameterizedTest
    @CsvSource({"125, 90", "130, 30", "135, 10", "140, 5", "145, 3", "150, 1.5", "160, 0.5"})
    void asASecondTableHasIt(double fahrenheit, double seconds) {
        assertEquals(seconds, at(Skin.ADULT, fahrenheit), 0.01 * seconds, fahrenheit + " °F");
    }

    /** A third table, of full-thickness burns by degrees Celsius, read in public: 55 °C 30 s, 60 °C 5 s. Same reach of a half. */
    @ParameterizedTest
    @CsvSource({"55, 30", "60, 5"})
    void asAThirdTableHasIt(double celsius, double seconds) {
        double ours = ScaldTime.seconds(Skin.ADULT, celsius).orElseThrow();
        assertTrue(ours >= seconds / 1.5 && ours <= seconds * 1.5, celsius + " °C: " + ours + " s");
    }

    @Test
    void hotterBurnsSoonerAndInfantsSoonerThanAdults() {
        double before = Double.POSITIVE_INFINITY;
        for (double waterC = 49; waterC <= 65.5; waterC += 0.25) {
            double adult = ScaldTime.seconds(Skin.ADULT, waterC).orElseThrow();
            assertTrue(adult < before, "at " + waterC);
            assertTrue(ScaldTime.seconds(Skin.INFANT, waterC).orElseThrow() < adult, "at " + waterC);
            before = adult;
        }
    }

    @Test
    void outsideTheTableNothingIsMadeUp() {
        assertTrue(ScaldTime.seconds(Skin.ADULT, 45).isEmpty());
        assertEquals(0.5, ScaldTime.seconds(Skin.ADULT, 90).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 111, Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoTemperatureOfWaterIsRefused(double waterC) {
        assertThrows(RefusedException.class, () -> ScaldTime.seconds(Skin.ADULT, waterC));
    }

    private static double at(Skin skin, double fahrenheit) {
        return ScaldTime.seconds(skin, (fahrenheit - 32) / 1.8).orElseThrow();
    }
}
