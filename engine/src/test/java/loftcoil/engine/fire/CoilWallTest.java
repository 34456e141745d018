package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CoilWallTest {

    private static final FireCoil COIL = TestFires.coil(1.6);
    private static final WaterFlow WATER = new WaterFlow(0.03, 60);

    /** The wall cut into 360 cells that conduct to each other and give to the water, heated by 1 + a cos φ. */
    @Test
    void theWallEvensTheHeatAsACutUpWallDoes() {
        CoilWall wall = CoilWall.of(COIL, WATER, 2000);
        double radius = COIL.tube().boreM() / 2;
        double meanFlux = 2000 / (2 * Math.PI * radius * COIL.lengthM());
        double film = wall.hottestWPerM2() / (wall.hottestC() - outC());
        int cells = 360;
        double angle = 2 * Math.PI / cells;
        double across = TubeInside.COPPER_W_PER_M_K * COIL.tube().wallM() / (radius * angle * radius * angle);
        double[] rise = new double[cells];
        for (int round = 0; round < 200_000; round++) {
            for (int i = 0; i < cells; i++) {
                double heat = CoilWall.ALONG * meanFlux * (1 + (CoilWall.ROUND - 1) * Math.cos(i * angle));
                double beside = rise[(i + 1) % cells] + rise[(i + cells - 1) % cells];
                rise[i] = (heat + across * beside) / (film + 2 * across);
            }
        }
        assertEquals(rise[0], wall.hottestC() - outC(), 0.005 * rise[0]);
    }

    private static double outC() {
        return new TubeInside(COIL, WATER).outC(2000);
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
