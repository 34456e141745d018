package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SkyYearReferenceTest {

    private static final SkyYear MADISON_YEAR = Madison.YEAR;

    /** Regulation (EU) 814/2013, Annex III, Tables 2 and 3, which the file below repeats for the assertions. */
    private static final SkyYear AVERAGE = SkyYear.of(new Place(48.6, 7.8, 140, 1), average(), 10);

    @ParameterizedTest
    @CsvFileSource(resources = "average-climate-eu-814-2013.csv", useHeadersInDisplayName = true)
    void theAverageClimateOfTheRegulationIsKept(int month, double globalWPerM2, double daytimeC) {
        Months.Mean mean = Months.mean(AVERAGE, month);
        assertEquals(globalWPerM2, mean.globalWPerM2(), 1e-9 * globalWPerM2);
        assertEquals(daytimeC, mean.airC(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0, 1037.16", "30, 890.33", "60, 489.85", "80, 137.31"})
    void clearSkyFormulaOfHaurwitz(double zenithDeg, double wPerM2) {
        // Haurwitz (1945), as restated in SAND2012-2389 (coefficients from memory, values worked out apart).
        assertEquals(wPerM2, haurwitz(Math.cos(Math.toRadians(zenithDeg))), 0.01);
    }

    @Test
    void noMeanDayIsBrighterThanAClearSky() {
        SunYear sun = MADISON_YEAR.sun();
        int seen = 0;
        for (int step = 0; step < sun.steps(); step++) {
            double height = sun.sun(step).cosZenith();
            if (height > 0.1) {
                double global = MADISON_YEAR.light(step).globalWPerM2();
                assertTrue(global < haurwitz(height), "step " + step + ": " + global + " at " + height);
                seen++;
            }
        }
        assertTrue(seen > 20_000, "only " + seen + " steps by day");
    }

    private static double haurwitz(double cosZenith) {
        return 1098 * cosZenith * Math.exp(-0.057 / cosZenith);
    }

    private static Climate average() {
        List<Double> wPerM2 = List.of(70., 104., 149., 192., 221., 222., 232., 217., 176., 129., 80., 56.);
        return new Climate(
                wPerM2.stream().map(v -> v * 24 / 1000).toList(),
                List.of(2.8, 2.6, 7.4, 12.2, 16.3, 19.8, 21.0, 22.0, 17.0, 11.9, 5.6, 3.2));
    }
}
