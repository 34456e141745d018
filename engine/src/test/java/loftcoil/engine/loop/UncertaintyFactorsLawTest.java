package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class UncertaintyFactorsLawTest {

    private static final Circuit LIT = Example.orchardBothy().circuit(40);

    @Test
    void allOnesChangesNothing() {
        assertEquals(LIT.search(), LIT.trimmed(new UncertaintyFactors(1, 1, 1)).search());
    }

    @Test
    void moreResistanceSlowsAndLessHastens() {
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 2, 1))) < flow(LIT));
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 0.5, 1))) > flow(LIT));
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(500, 1, 1))) <= flow(LIT));
    }

    @Test
    void twiceTheLossLosesNearlyTwiceTheHeat() {
        double once = LIT.search().forward().orElseThrow().heat().lostW();
        double twice = LIT.trimmed(new UncertaintyFactors(1, 1, 2))
                .search()
                .forward()
                .orElseThrow()
                .heat()
                .lostW();
        assertEquals(2, twice / once, 0.1);
    }

    @Test
    void higherUpWaterBoilsSooner() {
        double low = LIT.search().forward().orElseThrow().boilMargin().marginK();
        double high = LIT.withAltitudeM(2000)
                .search()
                .forward()
                .orElseThrow()
                .boilMargin()
                .marginK();
        // Example altitude 620 m: 1380 m more is about 4.7 K (IAPWS-IF97 with the standard atmosphere).
        assertEquals(4.7, low - high, 0.3);
    }

    @Test
    void everyBadFactorIsNamed() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> new UncertaintyFactors(-1, Double.NaN, 1000));
        assertEquals(3, refused.faults().size());
    }

    private static double flow(Circuit circuit) {
        return circuit.search().forward().orElseThrow().flowKgPerS();
    }
}
