package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ExtraterrestrialReferenceTest {

    @Test
    void solarConstantOfTheTextbook() {
        // World Radiation Center, in Duffie and Beckman, 4th ed., section 1.2 (from memory).
        assertEquals(1367, Extraterrestrial.SOLAR_CONSTANT_W_PER_M2);
    }

    @Test
    void fifteenthOfAprilAt43North() {
        // Duffie and Beckman, 4th ed., Example 1.10.1: sunset hour angle 98.9 degrees, 33.8 MJ/m².
        assertEquals(98.9, Extraterrestrial.sunsetHourAngleDeg(43, 9.4), 0.05);
        assertEquals(33.8, Extraterrestrial.dailyMJPerM2(43, 105), 0.05);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "days-and-outside-sun-duffie-beckman.csv",
            numLinesToSkip = 0,
            useHeadersInDisplayName = true)
    void at45NorthThroughTheYear(int month, int dayNumber, double declinationDeg, double outsideMJ) {
        // Table 1.10.1, from memory.
        assertEquals(outsideMJ, Extraterrestrial.dailyMJPerM2(45, dayNumber), 0.25, "month " + month);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "madison-duffie-beckman-2-19-1.csv", useHeadersInDisplayName = true)
    void atMadisonThroughTheYear(int month, double outsideMJ) {
        // Example 2.19.1; the book's own declinations differ in the second decimal, hence 0.1 %.
        assertEquals(outsideMJ, Extraterrestrial.dailyMJPerM2(43, Madison.MEAN_DAYS[month - 1]), 0.001 * outsideMJ);
    }

    @Test
    void theStepsAddUpToTheTextbooksDay() {
        // Equation 1.10.3 with the declination of the library's sun, for each day of a year.
        SunYear year = Madison.YEAR.sun();
        double lat = Math.toRadians(Madison.LATITUDE_DEG);
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            double declination =
                    year.sun(day * year.stepsPerDay() + year.stepsPerDay() / 2).declinationDeg();
            double sunset = Math.toRadians(Extraterrestrial.sunsetHourAngleDeg(Madison.LATITUDE_DEG, declination));
            double dec = Math.toRadians(declination);
            double wh = 24
                    / Math.PI
                    * Extraterrestrial.normalWPerM2(day + 1)
                    * (Math.cos(lat) * Math.cos(dec) * Math.sin(sunset) + sunset * Math.sin(lat) * Math.sin(dec));
            assertEquals(wh, year.outsideDailyWhPerM2(day), 0.001 * wh, "day " + (day + 1));
        }
    }

    @Test
    void coopersDeclinationIsOffByWhatItsPageSays() {
        // The formula is for the middle of the last century; the calendar has moved under the sun since.
        double worst = 0;
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            double sun = Madison.YEAR
                    .sun()
                    .sun(day * Madison.YEAR.sun().stepsPerDay()
                            + Madison.YEAR.sun().stepsPerDay() / 2)
                    .declinationDeg();
            worst = Math.max(worst, Math.abs(sun - Declination.cooperDeg(day + 1)));
        }
        assertTrue(worst > 0.5 && worst < 1, "worst " + worst);
    }
}
