package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What must hold of friction at every flow. */
class FrictionLawTest {

    /** Neither the factor nor its slope may jump where the regimes meet. */
    @Property(seed = "20261125", tries = 200)
    void noKinkWhereRegimesMeet(@ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double rough) {
        for (double joint : List.of(2000.0, 3100.0)) {
            double step = 1e-3;
            double below = Friction.darcyTimesReynolds(joint - step, rough);
            double at = Friction.darcyTimesReynolds(joint, rough);
            double above = Friction.darcyTimesReynolds(joint + step, rough);
            assertEquals(below, above, 1e-5 * at);
            assertEquals((at - below) / step, (above - at) / step, 1e-3);
        }
    }

    /** More flow never takes less pressure: f Re² grows without a break from rest to fast. */
    @Property(seed = "20261125", tries = 200)
    void pressureDropGrowsWithFlow(@ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double rough) {
        double before = 0;
        for (double re = 1; re < 1e7; re *= 1.02) {
            double drop = re * Friction.darcyTimesReynolds(re, rough);
            assertTrue(drop > before, "Re " + re);
            before = drop;
        }
    }

    /** Through the transition itself, in steps of one. */
    @Example
    void pressureDropGrowsThroughTheTransition() {
        double before = 1999 * Friction.darcyTimesReynolds(1999, 0);
        for (int re = 2000; re <= 3101; re++) {
            double drop = re * Friction.darcyTimesReynolds(re, 0);
            assertTrue(drop > before, "Re " + re);
            before = drop;
        }
    }

    /** The same wherever flow turns turbulent: sooner or later, smooth or rough. */
    @Property(seed = "20261125", tries = 100)
    void pressureDropGrowsWhereverItTurns(
            @ForAll @DoubleRange(min = 0.5, max = 2) double times,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double rough) {
        double before = 0;
        for (double re = 900; re <= 6400; re += 2) {
            double drop = re * Friction.darcyTimesReynolds(re, rough, times);
            assertTrue(drop > before, "Re " + re + ", times " + times);
            before = drop;
        }
    }

    @Property(seed = "20261125")
    void finiteInRange(
            @ForAll @DoubleRange(min = 1e-2, max = 1e8) @Scale(6) double reynolds,
            @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(6) double rough) {
        double darcy = Friction.darcy(reynolds, rough);
        assertTrue(darcy > 0.005 && Double.isFinite(darcy));
        assertEquals(darcy * reynolds, Friction.darcyTimesReynolds(reynolds, rough), 1e-12 * darcy * reynolds);
        assertTrue(Friction.darcy(reynolds, 0) <= darcy, "rough pipe resists at least as much as smooth");
    }

    @Example
    void restIsFinite() {
        assertEquals(64, Friction.darcyTimesReynolds(0, 1e-4), 0);
    }

    @Property(seed = "20261125")
    void refusedOutside(@ForAll("bad") double bad) {
        refused("reynolds", "0.000000001 to 100000000", () -> Friction.darcy(bad, 1e-4));
        refused("reynolds", "0 to 100000000", () -> Friction.darcyTimesReynolds(bad, 1e-4));
        refused("relativeRoughness", "0 to 0.05", () -> Friction.darcy(1e4, bad));
        refused("transitionTimes", "0.5 to 2", () -> Friction.darcyTimesReynolds(1e4, 1e-4, bad));
    }

    @Example
    void noFactorAtRest() {
        refused("reynolds", "0.000000001 to 100000000", () -> Friction.darcy(0, 1e-4));
    }

    @Provide
    Arbitrary<Double> bad() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e9, -0.01),
                Arbitraries.doubles().between(1.1e8, 1e12),
                Arbitraries.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY));
    }

    private static void refused(String path, String allowed, org.junit.jupiter.api.function.Executable call) {
        Fault fault = assertThrows(RefusedException.class, call).faults().get(0);
        assertEquals(path, fault.path());
        assertEquals(allowed, fault.allowed());
    }
}
