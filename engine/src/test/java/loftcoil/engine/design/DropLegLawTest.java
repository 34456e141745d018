package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** Where the level run of the hot side lies decides over the night: at the tank it cools a column beside it, low down it does not. */
class DropLegLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final double RISE_M = 1.8;
    private static final double NEARLY_LEVEL_M = 0.1;

    @Test
    void aLongerRunAtTheTankLosesMoreAndBehindADropLegItDoesNot() {
        double atTank = nightW(1, true);
        assertTrue(nightW(4, true) > 2 * atTank);
        assertEquals(nightW(1, false), nightW(4, false), 0.2);
        assertTrue(nightW(4, false) < atTank / 2);
    }

    @Test
    void legsThatDoNotCloseAreRefused() {
        Leg tooShort = BOTHY.hotLegs().get(0);
        assertThrows(RefusedException.class, () -> BOTHY.withHotLegs(List.of(tooShort)));
    }

    private static double nightW(double runM, boolean runAtTank) {
        Leg run = bare("run").withRiseM(NEARLY_LEVEL_M).withLevelRunM(runM);
        Leg climb = bare("climb").withRiseM(RISE_M - NEARLY_LEVEL_M).withLevelRunM(0);
        List<Leg> legs = runAtTank ? List.of(climb, run) : List.of(run, climb);
        return BOTHY.withHotLegs(legs)
                .circuitFireOut(60)
                .search()
                .fromRest()
                .map(flow -> -flow.heat().tankW())
                .orElse(0.0);
    }

    private static Leg bare(String name) {
        return BOTHY.hotLegs().get(1).withLagging(Optional.empty()).named(name);
    }
}
