package loftcoil.engine.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loftcoil.engine.water.Saturation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pressure of the air and what it does to the boiling point. */
class AtmosphereReferenceTest {

    /**
     * ISO 2533:1975 table 1 at geopotential altitudes (values printed to 1 Pa or better; those not at sea level computed
     * apart from this code with p = 101 325 (1 - 2.25577e-5 h)^5.25588, the rounded form of ICAO Doc 7488).
     */
    @ParameterizedTest
    @CsvSource({"0, 101325", "500, 95461", "1000, 89875", "1500, 84556", "2000, 79495", "3000, 70109", "5000, 54020"})
    void standardAtmosphere(double altitudeM, double pressurePa) {
        assertEquals(pressurePa, Atmosphere.pressurePa(altitudeM), 1);
    }

    /** Boiling point of water at an altitude: ISO 2533 and IF97 equation 31, computed apart from this code. */
    @ParameterizedTest
    @CsvSource({"0, 99.97", "500, 98.31", "1000, 96.65", "1500, 94.98", "3000, 89.97"})
    void boilingPointFallsWithAltitude(double altitudeM, double tempC) {
        assertEquals(tempC, Saturation.tempC(Atmosphere.pressurePa(altitudeM)), 0.01);
    }
}
