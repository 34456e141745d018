package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class MeanKeepingCurveLawTest {

    @Property(tries = 60)
    void meansAndBoundsAreKept(@ForAll long seed) {
        Random random = new Random(seed);
        double[] weights = random.doubles(365, 0, 3).toArray();
        double[] means = random.doubles(12, 0, 1).toArray();
        double[] days = new MeanKeepingCurve(0, 1, weights).through(means);
        double[] sums = new double[12];
        double[] whole = new double[12];
        for (int day = 0; day < 365; day++) {
            assertTrue(days[day] >= -1e-12 && days[day] <= 1 + 1e-12, "day " + day + ": " + days[day]);
            sums[DayOfYear.month(day)] += weights[day] * days[day];
            whole[DayOfYear.month(day)] += weights[day];
        }
        for (int month = 0; month < 12; month++) {
            assertEquals(means[month], sums[month] / whole[month], 1e-12, "month " + month);
        }
    }

    @Test
    void aLevelYearStaysLevel() {
        double[] weights = new double[365];
        Arrays.fill(weights, 1);
        double[] means = new double[12];
        Arrays.fill(means, 0.47);
        for (double day : new MeanKeepingCurve(0, 1, weights).through(means)) {
            assertEquals(0.47, day, 1e-12);
        }
    }

    @Test
    void aCosineThroughTheYearComesBack() {
        // Months means of a known smooth year give back its days within 1 % of its swing.
        double[] weights = new double[365];
        Arrays.fill(weights, 1);
        double[] means = new double[12];
        for (int day = 0; day < 365; day++) {
            means[DayOfYear.month(day)] += yearly(day) / DayOfYear.length(DayOfYear.month(day));
        }
        double[] days = new MeanKeepingCurve(-100, 100, weights).through(means);
        for (int day = 0; day < 365; day++) {
            assertEquals(yearly(day), days[day], 0.1, "day " + day);
        }
    }

    @Test
    void monthsOfNoWeightAreBridged() {
        double[] weights = new double[365];
        Arrays.fill(weights, 60, 300, 1);
        double[] means = {0, 0, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0, 0};
        for (double day : new MeanKeepingCurve(0, 1, weights).through(means)) {
            assertTrue(day > 0.3 && day < 0.7, "day " + day);
        }
    }

    private static double yearly(int day) {
        return 10 * Math.cos(2 * Math.PI * (day - 15) / 365);
    }
}
