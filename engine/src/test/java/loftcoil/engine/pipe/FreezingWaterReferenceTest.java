package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreezingWaterReferenceTest {

    private static final double INCH_M = 0.0254;

    /**
     * ASHRAE Handbook of Fundamentals, chapter 23, table of times to freezing, as restated by an engineering office: NPS 2 pipe (bore
     * 2.067 in, 2.375 in outside), 1.5 in of lagging of 0.30 Btu in/(h ft² °F), water from 42 °F, air at -18 °F: 1.4 h; at 20 °F: 4.6 h. The
     * wall of the pipe and the film of the air are left out there.
     */
    @ParameterizedTest
    @CsvSource({"-18, 1.4", "20, 4.6"})
    void coolingToFreezing(double airF, double hours) {
        double boreM = 2.067 * INCH_M;
        double wPerMK = 0.30 * 0.144228;
        double lossWPerMK = 2 * Math.PI * wPerMK / Math.log((2.375 + 3) / 2.375);
        FreezingWater metre = new FreezingWater(999.7 * Math.PI / 4 * boreM * boreM, lossWPerMK);
        assertEquals(hours, metre.hoursToZero(celsius(42), celsius(airF)), 0.05);
    }

    /** The heat of fusion over the loss, from steam-table values: 1 kg, 1 W/K, 10 K of frost: 333.4 kJ / 10 W. */
    @Test
    void freezingThrough() {
        FreezingWater kilogram = new FreezingWater(1, 1);
        assertEquals(333_400 / 10.0 / 3600, kilogram.hoursFreezing(1, -10), 1e-9);
        assertEquals(kilogram.hoursFreezing(1, -10) / 2, kilogram.hoursFreezing(0.5, -10), 1e-12);
        // A kilogram cools by ten kelvin with 42 kJ: an eighth of what freezing takes, and more while the difference
        // shrinks.
        assertTrue(kilogram.hoursToZero(10, -10) < kilogram.hoursFreezing(1, -10) / 7);
    }

    @Test
    void thereIsNoFreezingWithoutFrost() {
        FreezingWater kilogram = new FreezingWater(1, 1);
        assertThrows(RefusedException.class, () -> kilogram.hoursToZero(10, 0));
        assertThrows(RefusedException.class, () -> kilogram.hoursFreezing(1.1, -5));
        assertThrows(RefusedException.class, () -> new FreezingWater(0, 1));
        assertThrows(RefusedException.class, () -> new FreezingWater(1, Double.NaN));
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}
