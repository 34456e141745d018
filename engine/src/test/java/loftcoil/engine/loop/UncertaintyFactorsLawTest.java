package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Fault;
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
    void moreFrictionSlowsAsTheBalanceOfDriveAndDragAsks() {
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 1, 1, 1.15, 1))) < flow(LIT));
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 1, 1, 0.9, 1))) > flow(LIT));

        // Twice the drag of everything in a laminar loop: drive ~ 1/flow (one heat), drag ~ flow^1 (wall) to flow^2
        // (fittings), so the
        // flow falls to 2^(-1/2) to 2^(-1/3) of what it was.
        Circuit slow = LIT.withHeatW(100);
        double both = flow(slow.trimmed(new UncertaintyFactors(1, 2, 1, 2, 1))) / flow(slow);
        assertTrue(both > Math.pow(2, -1 / 2.0) - 0.01 && both < Math.pow(2, -1 / 3.0) + 0.01, both + " of the flow");
    }

    /** Between Re 2000 and 4000 sooner turbulence drags more; a laminar flow well below does not feel it. */
    @Test
    void turbulenceThatComesSoonerSlowsALoopInTheTransition() {
        double reynolds = reynolds(LIT);
        assertTrue(reynolds > 2000 && reynolds < 4000, reynolds + " is where the transition counts");
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 1, 1, 1, 0.7))) < flow(LIT));
        assertTrue(flow(LIT.trimmed(new UncertaintyFactors(1, 1, 1, 1, 1.4))) > flow(LIT));

        Circuit slow = LIT.withHeatW(100);
        assertTrue(reynolds(slow) < 1000);
        assertEquals(flow(slow), flow(slow.trimmed(new UncertaintyFactors(1, 1, 1, 1, 0.85))), 1e-3 * flow(slow));
    }

    @Test
    void frictionAndTransitionAreRefusedByName() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> new UncertaintyFactors(1, 1, 1, 0, Double.NaN));
        assertEquals(
                List.of("frictionTimes", "transitionTimes"),
                refused.faults().stream().map(Fault::path).toList());
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

    private static double reynolds(Circuit circuit) {
        return circuit.search().forward().orElseThrow().reynolds();
    }

    private static double flow(Circuit circuit) {
        return circuit.search().forward().orElseThrow().flowKgPerS();
    }
}
