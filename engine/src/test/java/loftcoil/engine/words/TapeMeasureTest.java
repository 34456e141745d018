package loftcoil.engine.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths as they stand on a tape in feet and inches: fractions in their lowest terms. */
class TapeMeasureTest {

    @ParameterizedTest
    @CsvSource({
        "86.5, 7 ft 2-1/2 in",
        "86.75, 7 ft 2-3/4 in",
        "87, 7 ft 3 in",
        "84, 7 ft",
        "5.5, 5-1/2 in",
        "0.25, 1/4 in",
        "-5.5, −5-1/2 in",
        "0, 0 in"
    })
    void feetAndInchesToAQuarter(double inches, String told) {
        assertEquals(told, TapeMeasure.feet(inches, 0));
    }

    @ParameterizedTest
    @CsvSource({"31.9375, 31-15/16 in", "5.5, 5-1/2 in", "6.25, 6-1/4 in", "-5.125, −5-1/8 in", "7, 7 in"})
    void inchesToASixteenth(double inches, String told) {
        assertEquals(told, TapeMeasure.inches(inches, 0));
    }

    @ParameterizedTest
    @CsvSource({
        "2.205, 2.21 m",
        "1, 1.00 m",
        "0.996, 1.00 m",
        "0.39, 39 cm",
        "0.0997, 10 cm",
        "0.064, 64 mm",
        "-0.39, −39 cm",
        "0.004, 4 mm",
        "0, 0 mm"
    })
    void metresAsABuilderSaysThem(double metres, String told) {
        assertEquals(told, Measure.taped(metres).metric());
    }

    @ParameterizedTest
    @CsvSource({"2.205, 2.205 m", "0.645, 64.5 cm", "0.064, 64 mm", "0.0635, 63.5 mm", "0, 0 m", "-0.3, -30 cm"})
    void whatMayBeTypedBackKeepsItsDigits(String metres, String told) {
        assertEquals(told, TapeMeasure.typed(new BigDecimal(metres)));
    }

    @ParameterizedTest
    @CsvSource({"0.39, 1 ft 3-1/4 in", "0.0318, 1-1/4 in", "0.004, 3/16 in"})
    void aSmallGapIsToldToASixteenth(double metres, String told) {
        assertEquals(told, Units.US.of(Measure.taped(metres)));
    }
}
