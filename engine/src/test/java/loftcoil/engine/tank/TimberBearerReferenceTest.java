package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

/** Bearers and straps against sums worked by hand from the clauses they name. */
class TimberBearerReferenceTest {

    /**
     * EN 1995-1-1, 6.1.6, by hand: 1 kN over 1 m: 1.35 × 1000 × 1000 / 4 = 337 500 N mm; 0.6 × 16 / 1.3 = 7.385 N/mm² asks for
     * 45 702 mm³. A timber of 45 × 95 has 67 688. Sag: 1.8 × 1000 × 10⁹ / (48 × 8000 × 3 215 156) = 1.46 mm of 4 mm.
     */
    @Test
    void aThousandNewtonsOverAMetre() {
        assertEquals(95, TimberBearer.deepMm(1000, 1).orElseThrow());
    }

    /** 1.5 kN over 1 m asks for 68 555 mm³, a little more than 45 × 95 has: 45 × 120 has 108 000. */
    @Test
    void halfAsMuchAgainIsJustTooMuchForTheSmallest() {
        assertEquals(95, TimberBearer.deepMm(1480, 1).orElseThrow());
        assertEquals(120, TimberBearer.deepMm(1500, 1).orElseThrow());
    }

    /**
     * Shear rules the short ones, 6.1.7: 0.6 × 3.2 / 1.3 = 1.477 N/mm²; 45 × 95 × 0.67 / 1.5 × 1.477 / 1.35 = 2089 N at a support; bending
     * over 0.3 m would bear 4937 N.
     */
    @Test
    void shearRulesWhatIsShort() {
        assertEquals(95, TimberBearer.deepMm(2080, 0.3).orElseThrow());
        assertEquals(120, TimberBearer.deepMm(2095, 0.3).orElseThrow());
    }

    /** Sag rules the long ones, 7.2: 45 × 220 over 5 m sags 20 mm under 10.0 × … : 48 × 8000 × 39 930 000 × 20 / (1.8 × 1.25e11) = 1363 N. */
    @Test
    void sagRulesWhatIsLong() {
        assertEquals(220, TimberBearer.deepMm(1360, 5).orElseThrow());
        assertTrue(TimberBearer.deepMm(1370, 5).isEmpty());
    }

    @Test
    void deeperForMoreAndForLonger() {
        int before = 0;
        for (double load = 100; load < 4000; load += 100) {
            int deep = TimberBearer.deepMm(load, 1.2).orElse(1000);
            assertTrue(deep >= before && deep <= TimberBearer.deepMm(load, 1.6).orElse(1000), "" + load);
            before = deep;
        }
        assertThrows(RefusedException.class, () -> TimberBearer.deepMm(Double.NaN, 1));
        assertThrows(RefusedException.class, () -> TimberBearer.deepMm(1000, 6));
    }

    /** EN 1993-1-1, 6.2.3, by hand: 0.9 × 12 mm² × 360 / 1.25 = 3110 N, over 1.5 is 2074 N. */
    @Test
    void theBandCarriesWhatItsHolesLeave() {
        assertEquals(2074, SteelBand.carriesN(), 1);
    }
}
