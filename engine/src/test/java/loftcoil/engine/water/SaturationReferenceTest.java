package loftcoil.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The boiling line against published values. */
class SaturationReferenceTest {

    /** IAPWS R7-97(2012), table 35; nine printed digits. The row of 600 K is from memory. */
    @ParameterizedTest
    @CsvSource({"300, 0.353658941e-2", "500, 0.263889776e1", "600, 0.123443146e2"})
    void verificationTable35(double kelvin, double megapascal) {
        assertEquals(megapascal * 1e6, Saturation.pressurePa(kelvin - 273.15), 5e-9 * megapascal * 1e6);
    }

    /** IAPWS R7-97(2012), table 36; nine printed digits. The rows of 1 and 10 MPa are from memory. */
    @ParameterizedTest
    @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
    void verificationTable36(double megapascal, double kelvin) {
        assertEquals(kelvin, Saturation.tempC(megapascal * 1e6) + 273.15, 1e-6);
    }

    /** Boiling at the standard atmosphere, IF97 equation 31: 99.9743 °C; ITS-90 sources print 99.974 °C. */
    @Test
    void boilsAtSeaLevel() {
        assertEquals(99.9743, Saturation.tempC(101_325), 1e-4);
    }

    /** The same equation in an independent library, over the pressures a loop can have; printed digits of a double. */
    @Test
    void independentLibrary() throws OutOfRangeException {
        IF97 library = new IF97(IF97.UnitSystem.SI);
        for (double pressurePa = 40_000; pressurePa <= 250_000; pressurePa += 5_000) {
            double kelvin = library.saturationTemperatureP(pressurePa);
            assertEquals(kelvin - 273.15, Saturation.tempC(pressurePa), 1e-9);
            assertEquals(library.saturationPressureT(kelvin), Saturation.pressurePa(kelvin - 273.15), 1e-4);
        }
    }

    /** Heat of evaporation: enthalpy of steam less that of water on the boiling line, IAPWS-IF97 in an independent library. */
    @Test
    void heatOfEvaporation() throws OutOfRangeException {
        IF97 library = new IF97(IF97.UnitSystem.SI);
        for (double tempC = 50; tempC <= 110; tempC += 5) {
            double kelvin = tempC + 273.15;
            double apart =
                    library.specificEnthalpySaturatedVapourT(kelvin) - library.specificEnthalpySaturatedLiquidT(kelvin);
            assertEquals(apart, Saturation.evaporationJPerKg(tempC), 0.001 * apart, tempC + " °C");
        }
    }

    /**
     * Extra head raises the boiling point: 1 m and 3 m of hot water of 958.35 kg/m³ above sea-level pressure, computed from
     * IF97 equation 31 apart from this code.
     */
    @ParameterizedTest
    @CsvSource({"1, 102.48", "3, 107.00"})
    void headRaisesTheBoilingPoint(double headM, double tempC) {
        assertEquals(tempC, Saturation.tempC(101_325 + 958.35 * 9.80665 * headM), 0.05);
    }
}
