package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How hot panes get, and which of them plain glass does not stand. */
class HottestPanesReferenceTest {

    private static final double PRESSURE_PA = 101_325;

    /**
     * Duffie and Beckman, 4th ed., example 6.4.1 (from memory, recomputed): plate at 100 °C, emittance 0.95, gap 25 mm, 45°, glass 0.88,
     * wind film 10, air and sky 10 °C: cover at 48.5 °C in the dark, upward film 16.5 and downward 11.5 W/(m² K) or so. In full sun it keeps
     * what its 3 mm of glass swallow, 1 − exp(−16 · 0.003) = 4.7 % and a little of what the plate sends back, and is warmer by that over
     * both films: 47 / 28 = 1.7 K.
     */
    @Test
    void theCoverOfTheWorkedExampleIsAsWarmAsTheBookSaysAndTheSunAddsLittle() {
        Glazing book = new Glazing(
                new PaneStack(1, new Glass(0.003, 16, 1.526, 0.88)),
                0.025,
                new TankFace(0.95, 0.95, 0.025),
                new Facing(45, 180),
                new Surroundings(10, 0, 0.2),
                Shutter.NONE);
        assertEquals(48.5 + 1.7, HottestPanes.of(book, PRESSURE_PA, 100, 10).innermostC(), 0.7);
    }

    /**
     * Salvaged panes before a tank at 98 °C, air at 0 °C. Glass makers' guidance gives plain float 40 K between middle and edge, EN 12150-1
     * gives toughened 200 K (both from memory): so every pane but the outermost must be toughened, and a single one too.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "4, 3"})
    void allButTheOutermostMustBeToughenedBeforeABoilingTank(int panes, int toughened) {
        HottestPanes hottest = HottestPanes.of(window(panes, GlassCoat.NONE), PRESSURE_PA, 98, 0);
        assertEquals(toughened, hottest.toughened());
        assertTrue(hottest.innermostC() - hottest.airC() < HottestPanes.TOUGHENED_STANDS_K);
    }

    @Test
    void aTankThatStaysCoolAsksForNone() {
        assertEquals(
                0,
                HottestPanes.of(window(2, GlassCoat.NONE), PRESSURE_PA, 35, 5).toughened());
    }

    @Test
    void panesFromTheTankOutwardsAreColderAndACoatKeepsTheInnerOneHotter() {
        List<Double> plain =
                HottestPanes.of(window(3, GlassCoat.NONE), PRESSURE_PA, 98, 0).middleC();
        assertTrue(plain.get(0) < plain.get(1) && plain.get(1) < plain.get(2), plain.toString());
        for (GlassCoat coat : List.of(GlassCoat.HARD, GlassCoat.SOFT)) {
            HottestPanes coated = HottestPanes.of(window(3, coat), PRESSURE_PA, 98, 0);
            assertTrue(coated.innermostC() > plain.get(2), coat + " " + coated);
            assertTrue(coated.middleC().get(0) < plain.get(0), coat + " " + coated);
        }
    }

    @Test
    void refusesTemperaturesOutOfRange() {
        Glazing window = window(2, GlassCoat.NONE);
        assertThrows(RefusedException.class, () -> HottestPanes.of(window, PRESSURE_PA, 111, 0));
        assertThrows(RefusedException.class, () -> HottestPanes.of(window, PRESSURE_PA, 98, Double.NaN));
    }

    private static Glazing window(int panes, GlassCoat coat) {
        return Glazing.salvaged(panes, 0.012, 0.92, new Facing(35, 180)).with(coat);
    }
}
