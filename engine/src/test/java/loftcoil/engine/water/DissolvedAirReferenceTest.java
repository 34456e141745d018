package loftcoil.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Air in water against printed values. The guideline spans 274 to 616 K with three constants for each gas; near room temperature
 * it lies up to 1.1 % from the tables made for that range alone, which is the tolerance here.
 */
class DissolvedAirReferenceTest {

    private static final double APART = 0.0125;

    /** EN 25814:1992 (ISO 5814), solubility of oxygen from moist air at 101.325 kPa. */
    @ParameterizedTest
    @CsvSource({"0, 14.6", "5, 12.8", "10, 11.3", "15, 10.1", "20, 9.09", "25, 8.26", "30, 7.56"})
    void oxygenOfTheStandard(double tempC, double mgPerL) {
        assertEquals(mgPerL, DissolvedAir.oxygenMgPerL(tempC, 101_325), APART * mgPerL);
    }

    /** APHA, Standard Methods, 1985: the equation of Benson and Krause for oxygen at one atmosphere, 0 to 40 °C. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 15, 20, 25, 30, 35, 40})
    void oxygenOfTheWaterWorks(double tempC) {
        double kelvin = tempC + 273.15;
        double mgPerL = Math.exp(-139.34410
                + 1.575701e5 / kelvin
                - 6.642308e7 / Math.pow(kelvin, 2)
                + 1.243800e10 / Math.pow(kelvin, 3)
                - 8.621949e11 / Math.pow(kelvin, 4));

        assertEquals(mgPerL, DissolvedAir.oxygenMgPerL(tempC, 101_325), APART * mgPerL);
    }

    /**
     * IUPAC Solubility Data Series, from memory: at 25 °C and one atmosphere of each gas alone 1.183, 2.301 and 2.519 of 100 000
     * molecules are nitrogen, oxygen and argon. For air at one atmosphere that makes 17.7 mL in a litre.
     */
    @Test
    void wholeAirFromItsParts() {
        double share = (0.78084 * 1.183 + 0.20946 * 2.301 + 0.00934 * 2.519) * 1e-5;
        double mLPerL = share * 997.05 / 18.015 * 22_414;

        double aloneAtOneAtmosphere = 101_325 + Saturation.pressurePa(25);
        assertEquals(mLPerL, DissolvedAir.mLPerL(25, aloneAtOneAtmosphere), APART * mLPerL);
    }
}
