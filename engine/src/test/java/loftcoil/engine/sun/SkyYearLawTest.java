package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SkyYearLawTest {

    /** Made-up temperatures; what the year must keep does not depend on them. */
    private static final List<Double> AIR = List.of(-9.5, 1.2, 5.4, 9.3, 13.8, 17.2, 19.3, 18.6, 14.7, 9.8, 4.2, 0.6);

    @ParameterizedTest
    @ValueSource(doubles = {0, 23.5, 46.2, -46.2, 60, 66.6, 70, -78, 89.5, 90, -90})
    void eachMonthsMeansAreKeptAtAnyLatitude(double latitudeDeg) {
        Place place = new Place(latitudeDeg, 7.4, 0, 1);
        Climate climate = new Climate(ofClearness(place, drawn(11)), AIR);
        SkyYear year = SkyYear.of(place, climate, 30);
        for (int month = 1; month <= 12; month++) {
            Months.Mean mean = Months.mean(year, month);
            double given = climate.globalKWhPerM2Day().get(month - 1);
            assertEquals(given, mean.globalWPerM2() * 24 / 1000, 1e-9, "sun of month " + month);
            assertEquals(AIR.get(month - 1), mean.airC(), 1e-9, "air of month " + month);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {46.2, -46.2, 69, 90})
    void nightIsDarkAndDiffuseIsAPart(double latitudeDeg) {
        Place place = new Place(latitudeDeg, 7.4, 0, 1);
        SkyYear year = SkyYear.of(place, new Climate(ofClearness(place, drawn(5)), AIR), 15);
        SunYear sun = year.sun();
        int nights = 0;
        for (int step = 0; step < sun.steps(); step++) {
            SkyLight light = year.light(step);
            assertTrue(light.globalWPerM2() >= light.diffuseWPerM2() - 1e-9 && light.diffuseWPerM2() >= 0);
            if (sun.sun(step).cosZenith() <= 0) {
                assertEquals(0, light.globalWPerM2());
                nights++;
            }
        }
        assertTrue(nights > sun.steps() / 3, "only " + nights + " dark steps");
    }

    @Test
    void eachDaysDiffuseIsTheCorrelations() {
        SkyYear year = Madison.YEAR;
        SunYear sun = year.sun();
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            double global = 0;
            double diffuse = 0;
            for (int step = day * sun.stepsPerDay(); step < (day + 1) * sun.stepsPerDay(); step++) {
                global += year.light(step).globalWPerM2() * sun.stepHours();
                diffuse += year.light(step).diffuseWPerM2() * sun.stepHours();
            }
            double noon =
                    sun.sun(day * sun.stepsPerDay() + sun.stepsPerDay() / 2).declinationDeg();
            double sunset = Extraterrestrial.sunsetHourAngleDeg(Madison.LATITUDE_DEG, noon);
            double fraction = Erbs.monthlyDiffuseFraction(global / sun.outsideDailyWhPerM2(day), sunset);
            assertEquals(fraction, diffuse / global, 1e-9, "day " + day);
        }
    }

    @Test
    void dayFollowsDaySmoothly() {
        // The largest month-to-month step of the example is 1.5 kWh/m² in 30 days: no day may leap by a tenth of that.
        SkyYear year = Madison.YEAR;
        double before = dayKWh(year, 364);
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            double here = dayKWh(year, day);
            assertEquals(before, here, 0.15, "day " + day);
            before = here;
        }
    }

    @Test
    void airIsColdestBeforeDawnAndWarmestInTheAfternoon() {
        int noonOfJuly = 195 * 1440 + 12 * 60;
        double atThree = Madison.YEAR.airC(noonOfJuly + 180);
        assertTrue(atThree > Madison.YEAR.airC(noonOfJuly) && atThree > Madison.YEAR.airC(noonOfJuly + 360));
        assertTrue(Madison.YEAR.airC(noonOfJuly - 540) < Madison.YEAR.airC(noonOfJuly - 180));
    }

    @Test
    void aNorthFacingWindowInTheSouthGetsWhatASouthFacingOneGetsInTheNorth() {
        // As a multiple of the level sun at the same clearness. Not to rounding: seasons differ in length, months in
        // days.
        Place north = new Place(46.2, 7.4, 620, 1);
        Place south = new Place(-46.2, 7.4, 620, 1);
        Climate northern = new Climate(ofClearness(north, () -> 0.45), AIR);
        Climate southern = new Climate(ofClearness(south, () -> 0.45), AIR);
        SkyYear northYear = SkyYear.of(north, northern, 15);
        SkyYear southYear = SkyYear.of(south, southern, 15);
        for (int month = 1; month <= 12; month++) {
            int half = (month + 5) % 12 + 1;
            double facingSouth = tilted(northYear, new Facing(35, 180), month)
                    / northern.globalKWhPerM2Day().get(month - 1);
            double facingNorth = tilted(southYear, new Facing(35, 0), half)
                    / southern.globalKWhPerM2Day().get(half - 1);
            assertEquals(facingSouth, facingNorth, 0.03 * facingSouth, "month " + month);
        }
    }

    private static double tilted(SkyYear year, Facing facing, int month) {
        return Months.tilted(
                year, month, (sun, light) -> HdkrSky.on(facing, sun, light, 0.2).totalWPerM2());
    }

    private static double dayKWh(SkyYear year, int day) {
        double sum = 0;
        for (int minute = day * 1440; minute < (day + 1) * 1440; minute++) {
            sum += year.globalWPerM2(minute) / 60_000;
        }
        return sum;
    }

    /** Clearness 0.2 to 0.7, drawn with a seed. */
    private static DoubleSupplier drawn(long seed) {
        Random random = new Random(seed);
        return () -> 0.2 + 0.5 * random.nextDouble();
    }

    private static List<Double> ofClearness(Place place, DoubleSupplier clearness) {
        SunYear sun = new SunYear(place, 60);
        double[] monthKWh = new double[12];
        for (int day = 0; day < DayOfYear.COUNT; day++) {
            monthKWh[DayOfYear.month(day)] += sun.outsideDailyWhPerM2(day) / 1000;
        }
        List<Double> means = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            means.add(clearness.getAsDouble() * monthKWh[month] / DayOfYear.length(month));
        }
        return means;
    }
}
