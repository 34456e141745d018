package loftcoil.runner.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTextTest {

    private static WrittenUnit unit(String text) {
        return UnitText.read(text).orElseThrow(() -> new AssertionError("not read: " + text));
    }

    @ParameterizedTest(name = "{0} is {1} {2}")
    @CsvSource(
            quoteCharacter = '~',
            value = {
                "L/min, 1, l/min",
                "litres per minute, 1, L/min",
                "litres a minute, 1, L/min",
                "LPM, 1, L/min",
                "m3/h, 16.6666666666667, L/min",
                "m³/h, 16.6666666666667, L/min",
                "m^3/h, 16.6666666666667, L/min",
                "cubic metres per hour, 16.6666666666667, L/min",
                "W/m2K, 1, W/(m² K)",
                "W/(m^2*K), 1, W/(m² K)",
                "W m-2 K-1, 1, W/(m² K)",
                "W·m⁻²·K⁻¹, 1, W/(m² K)",
                "W/m²/K, 1, W/(m² K)",
                "W/(m °C), 1, W/(m K)",
                "W/mK, 1, W/(m K)",
                "W/m °F, 1.8, W/(m K)",
                "kJ/(kg K), 1000, J/kg K",
                "kPa/m, 1000, Pa/m",
                "mm H2O, 9.80665, Pa",
                "mmH₂O, 9.80665, Pa",
                "mm of water, 9.80665, Pa",
                "mWC, 9806.65, Pa",
                "mmH2O/m, 9.80665, Pa/m",
                "mbar, 100, Pa",
                "KPA, 1000, Pa",
                "kWh, 3.6, MJ",
                "mg, 0.001, g",
                "mg/L, 1, g/m³",
                "kN, 1000, N",
                "lbf, 4.4482216152605, N",
                "kg/s, 60, kg/min",
                "in., 25.4, mm",
                "~\"~, 25.4, mm",
                "sq ft, 0.09290304, m2",
                "uk gal, 4.54609, L",
                "imperial gallons, 4.54609, L",
                "us gal, 3.785411784, L",
                "quarts, 0.946352946, L",
                "%, 0.01, ~~",
                "1/K, 1, /K",
                "days, 24, h",
                "°dH, 17.848, mg/L",
                "gpg, 17.118061045270945, mg/L",
                "ppm, 1, mg/L",
                "pounds per square inch, 1, psi",
                "lb/in², 1, psi",
                "lbf/sq in, 1, psi",
                "per cent, 1, %",
                "metres of water, 9806.65, Pa",
                "millimetres of water, 9.80665, Pa",
                "centimeters water gauge, 98.0665, Pa",
                "feet of water, 2989.06692, Pa",
                "kilowatt-hours, 1, kWh",
                "kilowatt hours per day, 1, kWh/d",
                "watt-hours, 0.001, kWh",
                "watts per degree, 1, W/K",
                "watts per square metre per degree, 1, W/(m² K)",
                "Btu per hour per degree, 1, BTU/(h °F)",
                "cc, 0.001, L",
                "dm³, 1, L",
                "pints, 0.473176473, L",
                "UK pints, 0.56826125, L",
                "gals, 3.785411784, L",
                "U.S. gallons, 3.785411784, L",
                "U.S. gallons per minute, 3.785411784, L/min",
                "kgs, 1, kg",
                "kgf, 9.80665, N",
                "kilograms-force, 9.80665, N",
                "’, 0.3048, m",
                "”, 25.4, mm",
                "s-1, 1, 1/s",
            })
    void writtenInManyWays(String text, double factor, String other) {
        assertEquals(factor, unit(text).to(unit(other == null ? "" : other), 1), factor * 1e-12);
    }

    /** NIST Special Publication 811 (2008), appendix B.8; digits as printed there, from memory. */
    @ParameterizedTest(name = "{0} is {1} {2}")
    @CsvSource({
        "gal, 3.785412e-3, m3, 1e-9",
        "gal/min, 6.309020e-5, m3/s, 1e-11",
        "psi, 6.894757e3, Pa, 1e-3",
        "inH2O, 2.490889e2, Pa, 1e-4",
        "mmH2O, 9.80665, Pa, 1e-9",
        "Btu, 1.055056e3, J, 1e-3",
        "Btu/h, 2.930711e-1, W, 1e-7",
        "kcal, 4.1868e3, J, 1e-9",
        "lb, 4.535924e-1, kg, 1e-7",
        "ft, 3.048e-1, m, 1e-12",
        "in, 2.54e-2, m, 1e-12",
        "bar, 1e5, Pa, 1e-6",
        "atm, 1.01325e5, Pa, 1e-6",
        "kWh, 3.6e6, J, 1e-3",
    })
    void valuesOfThePublishedTable(String text, double value, String si, double lastDigit) {
        assertEquals(value, unit(text).to(unit(si), 1), lastDigit);
    }

    @Test
    void temperaturesAreLevelsOrSteps() {
        assertEquals(75, unit("F").to(unit("°C"), 167), 1e-9);
        assertEquals(75, unit("degrees Fahrenheit").to(unit("degrees centigrade"), 167), 1e-9);
        assertEquals(-40, unit("deg C").to(unit("deg F"), -40), 1e-9);
        assertEquals(373.15, unit("°C").to(unit("K"), 100), 1e-9);
        assertEquals(10, unit("°F").stepTo(unit("°C"), 18), 1e-9);
        assertEquals(10, unit("K").stepTo(unit("degrees Celsius"), 10), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"foo", "m/", "/", "()", "m2x", "L/min foo", "°", "Pa Pa Q", "m^99", "W/(m K) 3", "H2O", "🜁"})
    void whatIsNoUnitIsNone(String text) {
        assertTrue(UnitText.read(text).isEmpty(), () -> text + " was read as " + UnitText.read(text));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "L/min, a volume flow",
        "gal/h, a volume flow",
        "Pa, a pressure",
        "psi, a pressure",
        "kg/s, a mass flow",
        "°F, a temperature",
        "BTU/h, a power (a flow of heat)",
        "kWh, an amount of energy",
        "kg/m3, a density",
        "m^5, another kind of quantity",
    })
    void kindsHaveWords(String text, String kind) {
        assertEquals(kind, QuantityKind.of(unit(text)));
    }

    @Test
    void gallonsSayWhichTheyAre() {
        assertEquals("US gal/min", unit("gal/min").shown());
        assertEquals("UK gal", unit("imp gal").shown());
    }
}
