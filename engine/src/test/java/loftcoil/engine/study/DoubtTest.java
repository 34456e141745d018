package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class DoubtTest {

    private static final Doubt FORTY_PERCENT = new Doubt(0.6, 1.4);

    /**
     * Standard normal distribution, NIST/SEMATECH e-Handbook, table 1.3.6.7.1: 0.84134 of it below one deviation, 0.97725 below two.
     * Cut at two, a share p of the draws is (p − 0.02275) / 0.95450 of the whole.
     */
    @Test
    void oneDeviationIsTheEndGiven() {
        double share = (0.84134 - 0.02275) / 0.95450;
        assertEquals(1.4, FORTY_PERCENT.at(share), 1e-4);
        assertEquals(0.6, FORTY_PERCENT.at(1 - share), 1e-4);
        // "Two chances in three": 0.68269 uncut (same table), 0.715 of what the cut leaves.
        assertEquals(0.68269 / 0.95450, 2 * share - 1, 1e-4);
    }

    @Test
    void theMiddleIsOneAndTheEndsAreTheSquares() {
        assertEquals(1, FORTY_PERCENT.at(0.5), 1e-9);
        assertEquals(1.96, FORTY_PERCENT.at(1), 1e-6);
        assertEquals(0.36, FORTY_PERCENT.at(0), 1e-6);
        assertEquals(1, Doubt.none().at(0.01));
    }

    @Test
    void neverNegativeAndAlwaysGrowing() {
        double before = 0;
        for (double share = 0; share <= 1; share += 0.01) {
            double factor = FORTY_PERCENT.at(share);
            assertTrue(factor > before, "at " + share);
            before = factor;
        }
    }

    @Test
    void everyBadEndIsNamed() {
        RefusedException refused = assertThrows(RefusedException.class, () -> new Doubt(Double.NaN, 0.9));
        assertEquals(2, refused.faults().size());
        assertThrows(RefusedException.class, () -> new SpreadPlan(0, 1, 100));
        assertThrows(
                RefusedException.class,
                () -> new LoopDoubts(
                        Doubt.none(), Doubt.none(), Doubt.none(), Doubt.none(), Doubt.none(), Doubt.none(), -1));
    }
}
