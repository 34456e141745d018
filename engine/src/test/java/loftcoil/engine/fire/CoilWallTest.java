package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Stream;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeMetal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CoilWallTest {

    private static final FireCoil COIL = TestFires.coil(1.6);
    private static final WaterFlow WATER = new WaterFlow(0.03, 60);

    /** The wall cut into 360 cells that conduct to each other and give to the water, heated by 1 + a cos φ. */
    @ParameterizedTest
    @EnumSource(TubeMetal.class)
    void theWallEvensTheHeatAsACutUpWallDoes(TubeMetal metal) {
        Tube tube = new Tube("22x1.5", 0.022, 0.0015, metal);
        FireCoil coil = new FireCoil(tube, COIL.lengthM(), COIL.place(), COIL.sootM());
        CoilWall wall = CoilWall.of(coil, WATER, 2000);
        double radius = tube.boreM() / 2;
        double meanFlux = 2000 / (2 * Math.PI * radius * coil.lengthM());
        double outC = new TubeInside(coil, WATER).outC(2000);
        double film = wall.hottestWPerM2() / (wall.hottestC() - outC);
        int cells = 360;
        double angle = 2 * Math.PI / cells;
        double across = metal.conductivityWPerMK() * tube.wallM() / (radius * angle * radius * angle);
        double[] rise = new double[cells];
        for (int round = 0; round < 200_000; round++) {
            for (int i = 0; i < cells; i++) {
                double heat = CoilWall.ALONG * meanFlux * (1 + (CoilWall.ROUND - 1) * Math.cos(i * angle));
                double beside = rise[(i + 1) % cells] + rise[(i + cells - 1) % cells];
                rise[i] = (heat + across * beside) / (film + 2 * across);
            }
        }
        assertEquals(rise[0], wall.hottestC() - outC, 0.005 * rise[0]);
    }

    /** Copper carries heat round to the cold side, steel less, stainless least. */
    @Test
    void theHotSideIsHotterTheWorseTheMetalConducts() {
        double[] hottestC = Stream.of(TubeMetal.COPPER, TubeMetal.STEEL, TubeMetal.STAINLESS)
                .map(metal -> new FireCoil(new Tube("22x1.5", 0.022, 0.0015, metal), 1.6, COIL.place(), COIL.sootM()))
                .mapToDouble(coil -> CoilWall.of(coil, WATER, 2000).hottestC())
                .toArray();
        assertTrue(hottestC[0] + 1 < hottestC[1] && hottestC[1] + 1 < hottestC[2], Arrays.toString(hottestC));
    }

    @Test
    void aColdCoilHasNoHotSideAndMoreHeatAHotterOne() {
        CoilWall none = CoilWall.of(COIL, WATER, 0);
        assertEquals(60, none.meanC(), 1e-9);
        assertEquals(60, none.hottestC(), 1e-9);
        assertEquals(0, none.hottestWPerM2());
        CoilWall some = CoilWall.of(COIL, WATER, 1000);
        CoilWall more = CoilWall.of(COIL, WATER, 2000);
        assertTrue(some.meanC() < some.hottestC() && some.hottestC() < more.hottestC());
        assertTrue(more.hottestWPerM2() > 2000 / (Math.PI * COIL.tube().boreM() * COIL.lengthM()));
    }
}
