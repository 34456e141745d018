package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.LegionellaLife;
import org.junit.jupiter.api.Test;

/** How long water stands warm: from 20 to 45 °C as HSE HSG274 part 2 has it, heated through by half an hour at 60 °C. */
class ExtremesWatchLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final double HOUR_S = 3600;

    private final ExtremesWatch watch = new ExtremesWatch();
    private final Layers tank = new Layers(SystemPlan.layerPlan(BOTHY, Pace.USUAL));

    private void hours(int hours, double tempC) {
        for (int i = tank.wet() - 1; i >= 0; i--) {
            tank.warm(i, tempC);
        }
        for (int i = 0; i < tank.wet(); i++) {
            tank.warm(i, tempC);
        }
        for (int hour = 0; hour < hours; hour++) {
            watch.see(tank, HOUR_S);
        }
    }

    private double days() {
        return watch.extremes(0, 0).longestWarmDays();
    }

    @Test
    void growthIsCountedFromTwentyToFortyFive() {
        hours(240, 19.9);
        assertEquals(0, days());
        hours(240, 45.1);
        assertEquals(0, days());
        hours(24, 20.1);
        hours(24, 44.9);
        assertEquals(2, days(), 1e-9);
    }

    @Test
    void aColdNightDoesNotBreakTheDaysAndAColdDayDoes() {
        hours(48, 30);
        hours(23, 15);
        hours(1, 30);
        assertEquals(3, days(), 1e-9);
        hours(24, 15);
        hours(24, 30);
        assertEquals(3, days(), 1e-9);
    }

    @Test
    void halfAnHourAtSixtyBeginsAnew() {
        hours(96, 30);
        hours(1, 60);
        hours(48, 30);
        assertEquals(4, days(), 1e-9);
        assertEquals(15, 1800 * LegionellaLife.decadesPerS(60), 1e-9);
    }

    @Test
    void noTimeIsLongerThanTheYearAndRunInIsNoPartOfIt() {
        for (double kW : new double[] {0.3, 0.5, 2}) {
            YearRun year = YearRun.of(BOTHY.withCoilHeatKW(kW));
            double days = year.extremes().longestWarmDays();
            assertTrue(days <= 365, kW + " kW: " + days);
            assertEquals(kW < 1, days == 365, kW + " kW: " + days);
        }
    }
}
