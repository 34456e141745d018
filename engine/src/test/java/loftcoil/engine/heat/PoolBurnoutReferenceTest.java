package loftcoil.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class PoolBurnoutReferenceTest {

    /** IAPWS R1-76(2014), table of check values: 0.0716859625 N/m at 300 K. */
    @Test
    void surfaceTension() {
        assertEquals(0.0716859625, PoolBurnout.surfaceTensionNPerM(300), 1e-8);
    }

    /** Incropera, 6th ed., example 10.1 (from memory): 1.26 MW/m² for water at 1 atm with 0.149 in place of 0.131. */
    @Test
    void waterAtOneAtmosphere() {
        assertEquals(1.26e6 * 0.131 / 0.149, PoolBurnout.wPerM2(101_325), 0.01 * 1.11e6);
    }

    /** Thinner vapour carries the heat off less well. */
    @Test
    void lessOnAMountain() {
        assertTrue(PoolBurnout.wPerM2(70_000) < PoolBurnout.wPerM2(101_325));
        assertThrows(RefusedException.class, () -> PoolBurnout.wPerM2(Double.NaN));
    }
}
