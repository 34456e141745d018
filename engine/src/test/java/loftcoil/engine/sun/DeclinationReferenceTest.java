package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DeclinationReferenceTest {

    @Test
    void thirteenthOfFebruary() {
        // Duffie and Beckman, 4th ed., Example 1.6.1: -14 degrees on day 44; equation 1.6.1a gives -13.95.
        assertEquals(-13.95, Declination.cooperDeg(44), 0.01);
        assertEquals(-14, Declination.cooperDeg(44), 0.5);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "days-and-outside-sun-duffie-beckman.csv",
            numLinesToSkip = 0,
            useHeadersInDisplayName = true)
    void meanDaysOfTheMonths(int month, int dayNumber, double declinationDeg) {
        // Table 1.6.1 (Klein, 1977), from memory, printed to 0.1 degree.
        assertEquals(declinationDeg, Declination.cooperDeg(dayNumber), 0.0501, "month " + month);
    }
}
