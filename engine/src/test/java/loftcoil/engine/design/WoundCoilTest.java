package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class WoundCoilTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** An estimate apart from this program: wound 0.2 m wide, flow is lower by 2 to 8 % with 1.6 m, 6 to 21 % with 6 m. */
    @Test
    void aWoundCoilSlowsTheLoop() {
        assertEquals(0.05, slower("1.6"), 0.03);
        assertEquals(0.135, slower("6"), 0.075);
    }

    private static double slower(String lengthM) {
        Design straight = Changes.apply(BOTHY, "coil.lengthM", lengthM);
        Design wound = Changes.apply(straight, "coil.windingMm", "200");
        return 1 - flow(wound) / flow(straight);
    }

    private static double flow(Design design) {
        return design.circuit(40).search().forward().orElseThrow().flowKgPerS();
    }

    @Test
    void aTightWindingIsRefusedByItsField() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, "coil.windingMm", "60"));
        assertTrue(refused.getMessage().contains("coil.windingMm: 60"), refused.getMessage());
        assertEquals(
                66,
                Changes.apply(BOTHY, "coil.windingMm", "66").coil().windingMm().orElseThrow());
    }
}
