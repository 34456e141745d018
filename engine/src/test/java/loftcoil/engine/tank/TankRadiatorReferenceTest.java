package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.run.YearRun;
import org.junit.jupiter.api.Test;

class TankRadiatorReferenceTest {

    private static final TankRadiator ONE_KW = new TankRadiator(1000);

    /**
     * Makers' tables give factors on the rating at 50 K for EN 442 radiators with n = 1.3: 0.515 at 30 K, 0.748 at 40 K, 1.267 at 60 K
     * (from memory). What gravity leaves of it is the same for all.
     */
    @Test
    void otherDifferencesGoByTheFactorsOfTheTables() {
        double rated = watts(70);
        assertEquals(0.515, watts(50) / rated, 0.001);
        assertEquals(0.748, watts(60) / rated, 0.001);
        assertEquals(1.267, watts(80) / rated, 0.001);
        assertEquals(1000 * TankRadiator.BY_GRAVITY, rated, 1e-9);
    }

    @Test
    void aTankNoWarmerThanItsPlaceGivesNone() {
        assertEquals(0, ONE_KW.wPerK(new Standing(20, 20)));
        assertEquals(0, ONE_KW.wPerK(new Standing(12, 20)));
        assertThrows(RefusedException.class, () -> new TankRadiator(-1));
        assertThrows(RefusedException.class, () -> new TankRadiator(Double.NaN));
    }

    /** A hot year boils no more with it, and is cooler by more than the layers of the tank blur, which is 1 °C at most. */
    @Test
    void aBoilingTankIsCooledByIt() {
        Design hot =
                Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "4").withCoilHeatKW(4);
        Design leaking = Changes.apply(hot, "tank.radiatorKW", "2.5");
        YearRun before = YearRun.of(hot);
        YearRun after = YearRun.of(leaking);
        assertTrue(before.boilingMin() > 0 && after.boilingMin() == 0, before.boilingMin() + " " + after.boilingMin());
        assertTrue(after.hottestC() < before.hottestC() - 1, before.hottestC() + " " + after.hottestC());
    }

    private static double watts(double waterC) {
        return ONE_KW.wPerK(new Standing(waterC, 20)) * (waterC - 20);
    }
}
