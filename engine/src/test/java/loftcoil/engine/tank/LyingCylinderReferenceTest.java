package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Volume below a level of a lying round tank. */
class LyingCylinderReferenceTest {

    private static final LyingCylinder TANK = new LyingCylinder(0.18, 0.5);

    /**
     * Share of a circle's area below a level, from tables of circular segments (h/D, area/D²: 0.1 0.0409, 0.25 0.1535, 0.5 0.3927,
     * 0.75 0.6319, 0.9 0.7445; for instance Perry's Chemical Engineers' Handbook, table of segments of circles, from memory,
     * recomputed).
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.0409", "0.25, 0.1535", "0.5, 0.3927", "0.75, 0.6319", "0.9, 0.7445"})
    void holdsTheSegmentsOfTheTable(double share, double areaOverSquare) {
        double below = TANK.volumeBelowM3(share * 0.5) / TANK.lengthM() / 0.25;
        assertEquals(areaOverSquare, below, 6e-5);
    }

    /** A stone byre's lying tank: 180 L, 0.5 m across, filled to 0.46 m holds 173 L; taken for upright it would be 166. */
    @Test
    void theWaterlineOfALyingTankIsNotAStraightShare() {
        assertEquals(0.173, TANK.volumeBelowM3(0.46), 5e-4);
        assertEquals(0.1656, new UprightCylinder(0.18, 0.5).volumeBelowM3(0.46), 1e-12);
    }

    @Test
    void levelAndVolumeUndoEachOther() {
        for (double level = 0; level <= 0.5; level += 0.01) {
            assertEquals(level, TANK.levelM(TANK.volumeBelowM3(level)), 1e-7);
        }
        assertEquals(0, TANK.levelM(-1));
        assertEquals(0.5, TANK.levelM(1));
    }

    @Test
    void slicesHoldTheSame() {
        double[] cuts = new LayerPlan(TANK, new Ports(0.05, 0.4, 0.2, 0.46, 0.02), 12, 10, 100).cutsM();
        for (int i = 0; i < 12; i++) {
            double slice = TANK.volumeBelowM3(cuts[i + 1]) - TANK.volumeBelowM3(cuts[i]);
            assertEquals(TANK.volumeBelowM3(0.46) / 12, slice, 1e-9);
        }
    }

    /** Its loss lies between that of a flat-walled box that hugs it and that of one inside it. */
    @Test
    void losesWhatItsSurfaceDoes() {
        Standing at = new Standing(60, 15);
        TankLagging coat = TankLagging.allRound(new loftcoil.engine.pipe.Lagging("stone wool", 0.05));
        double lost = TankLoss.of(TANK, coat, at).totalWPerK();
        double around = TankLoss.of(new Box(TANK.lengthM(), 0.5, 0.5), coat, at).totalWPerK();
        double inside =
                TankLoss.of(new Box(TANK.lengthM(), 0.35, 0.35), coat, at).totalWPerK();
        assertTrue(inside < lost && lost < around, inside + " < " + lost + " < " + around);
    }

    @Test
    void refusesSizesThatCannotBe() {
        assertThrows(RefusedException.class, () -> new LyingCylinder(Double.NaN, 0.5));
        assertThrows(RefusedException.class, () -> new LyingCylinder(0.1, 0));
    }
}
