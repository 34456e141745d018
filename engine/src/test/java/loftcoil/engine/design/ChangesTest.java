package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChangesTest {

    private static final Design BOTHY = Example.orchardBothy();

    static List<String> names() {
        return Changes.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyChangeSaysWhatItIsAndTakesItsOwnPresentValue(String name) {
        Change change = Changes.describe(name);
        assertTrue(!change.label().isBlank() && !change.allowed().isBlank());
        String current = Changes.current(BOTHY, name);
        assertEquals(current, Changes.current(Changes.apply(BOTHY, name, current), name));
    }

    @ParameterizedTest
    @MethodSource("names")
    void nonsenseIsRefusedAtTheChangesName(String name) {
        for (String nonsense : List.of("", "a lot", "NaN", "1e9", "-1e9")) {
            RefusedException refused = assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, name, nonsense));
            assertEquals(
                    List.of(name), refused.faults().stream().map(Fault::path).toList());
        }
    }

    @Test
    void atLeastTenChangesAreKnown() {
        assertTrue(Changes.names().size() >= 10);
    }

    @Test
    void anUnknownChangeNamesTheNearest() {
        RefusedException refused = assertThrows(RefusedException.class, () -> Changes.describe("tank.base"));
        assertTrue(refused.faults().get(0).allowed().contains("tank.baseM"), refused.getMessage());
    }

    @Test
    void movingTheTankStretchesTheLongestRisesAndKeepsTheirLevelRun() {
        Design moved = Changes.apply(BOTHY, "tank.baseM", "2.7");
        assertEquals(-2.2, moved.coldLegs().get(0).riseM(), 1e-12);
        assertEquals(
                BOTHY.coldLegs().get(0).levelRunM(), moved.coldLegs().get(0).levelRunM(), 1e-12);
        assertEquals(BOTHY.coldLegs().get(1), moved.coldLegs().get(1));
        assertEquals(1.95, moved.hotLegs().get(0).riseM(), 1e-12);
    }

    @Test
    void aTankCanBeMovedUpAndDownAndBackAgain() {
        for (double baseM = 1.5; baseM <= 6; baseM += 0.25) {
            Design moved = BOTHY.withTankBaseM(baseM).withTankBaseM(2.2);
            assertEquals(
                    BOTHY.hotLegs().get(0).lengthM(), moved.hotLegs().get(0).lengthM(), 1e-9);
        }
    }

    @Test
    void aTankCanStandFarBelowTheCoil() {
        for (double baseM = -9; baseM <= 1.5; baseM += 0.25) {
            Design moved = BOTHY.withTankBaseM(baseM);
            double hot = moved.hotLegs().stream().mapToDouble(Leg::riseM).sum();
            assertEquals(baseM + 0.35 - 0.75, hot, 1e-9);
        }
    }

    @Test
    void movingTheCoilKeepsTheLoopClosed() {
        Design moved = BOTHY.withCoilInletM(0.1);
        assertEquals(-1.95, moved.coldLegs().get(0).riseM(), 1e-12);
        assertEquals(0.5, moved.coil().outletM(), 1e-12);
    }

    @Test
    void oneTubeForTheWholeLoop() {
        Design changed = Changes.apply(BOTHY, "loop.tube", "EN1057 28x0.9");
        assertEquals("EN1057 28x0.9", changed.coil().tube());
        assertTrue(changed.hotLegs().stream().allMatch(leg -> leg.tube().equals("EN1057 28x0.9")));
    }

    @Test
    void aChangeThatMakesAFaultIsRefused() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, "coil.lengthM", "0.2"));
        assertEquals("coil.lengthM", refused.faults().get(0).path());
    }
}
