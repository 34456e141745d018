package loftcoil.engine.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumeralTest {

    @ParameterizedTest(name = "{0} with {1} digits is {2}")
    @CsvSource({
        "0, 5, 0",
        "-0.0, 5, 0",
        "7.761e-16, 3, 7.76 × 10⁻¹⁶",
        "-1.5e20, 3, −1.5 × 10²⁰",
        "0.00427, 5, 0.00427",
        "1234.4, 3, 1230",
        "1500, 3, 1500",
        "2.675, 3, 2.68",
        "-2.675, 3, −2.68",
        "14.3700001, 6, 14.37",
        "NaN, 3, NaN"
    })
    void aPersonReadsIt(double value, int digits, String shown) {
        assertEquals(shown, Numeral.shown(value, digits));
    }

    @Test
    void whatAProgramReadsAgainHasAHyphenAndNoPowerOfTen() {
        assertEquals("0.000000001", Numeral.typed(1e-9, 12));
        assertEquals("2000000000", Numeral.typed(2e9, 12));
        assertEquals("-0.6", Numeral.typed(-0.6));
        assertEquals("0", Numeral.typed(-0.0));
        assertEquals("-2", Numeral.typedTo(3, -2.0004));
        assertEquals("Infinity", Numeral.typed(Double.POSITIVE_INFINITY));
        assertEquals("-2.5 m", Numeral.hyphened("−2.5 m"));
    }

    @Test
    void decimalsAreKeptAndNoughtHasNoSign() {
        assertEquals("−1.50", Numeral.fixed(-1.5, 2));
        assertEquals("0.0", Numeral.fixed(-0.01, 1));
        assertEquals("12%", Numeral.withUnit("12", "%"));
    }
}
