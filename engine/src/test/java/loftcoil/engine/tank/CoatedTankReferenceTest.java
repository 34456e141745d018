package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.LaggingTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lagged tanks lose, against a published store table and a store left to cool. */
class CoatedTankReferenceTest {

    /** The table is for water at 65 °C in a room at 20 °C (from memory). */
    private static final Standing TABLE_AT = new Standing(65, 20);

    /**
     * UK SAP 2012, table 2 note 1 and table 2a note 2: kWh for each litre and day 0.005 + 0.55/(t + 4.0) in factory foam, 0.005 +
     * 1.76/(t + 12.8) in a loose jacket, times (120/V)^⅓. The coat's part of ours is first made that of the table's foam
     * (0.030 W/(m K), from memory) and wool (0.047, BS 5422:1990 annex, glass wool of 16 kg/m³), which is what {@link CoatFit} says
     * it took. Ports do not grow with the tank here as they do there: up to 11 % at 210 litres.
     */
    @ParameterizedTest
    @CsvSource({
        "110, 25",
        "110, 50",
        "110, 80",
        "120, 25",
        "120, 38",
        "120, 50",
        "120, 80",
        "120, 100",
        "140, 38",
        "160, 50",
        "210, 25",
        "210, 50"
    })
    void losesWhatTheStoreTableSays(double litres, double thickMm) {
        double foam = litres * (0.005 + 0.55 / (thickMm + 4.0)) * Math.cbrt(120 / litres);
        double jacket = litres * (0.005 + 1.76 / (thickMm + 12.8)) * Math.cbrt(120 / litres);
        assertEquals(foam, ofTable(litres, CoatFit.CLOSE_FITTING, new Coat("PIR foam", thickMm, 0.030)), 0.12 * foam);
        assertEquals(
                jacket, ofTable(litres, CoatFit.HAND_WRAPPED, new Coat("glass wool", thickMm, 0.047)), 0.12 * jacket);
    }

    private record Coat(String material, double thickMm, double tableWPerMK) {}

    /** kWh a day of an upright tank twice as high as wide. */
    private static double ofTable(double litres, CoatFit fit, Coat coat) {
        TankLagging lagging = TankLagging.allRound(new Lagging(coat.material(), coat.thickMm() / 1000));
        double ours = CoatedTank.without(twiceAsHigh(litres), lagging, fit)
                        .lossAt(TABLE_AT)
                        .totalWPerK()
                - CoatFit.PORTS_W_PER_K;
        double asTable = ours
                * coat.tableWPerMK()
                / LaggingTable.require("", coat.material()).conductivityWPerMK(45);
        return (asTable + CoatFit.PORTS_W_PER_K) * 45 * 24 / 1000;
    }

    private static UprightCylinder twiceAsHigh(double litres) {
        double wideM = Math.cbrt(4 * litres / 1000 / Math.PI / 2);
        return new UprightCylinder(litres / 1000, 2 * wideM);
    }

    /**
     * A store of 2.96 m by 1.15 m in 100 mm of 0.039 W/(m K), left at rest for 5.5 h with a mean of 76 °C in a room of 25 °C: 284 ± 42 W
     * by least squares through 23 readings (data in the documentation of an open storage library). The bare forms give 260 W and
     * are inside its error; a close-fitting coat by the store table is above it, to the side of more loss.
     */
    @Test
    void theStoreLeftToCoolLiesBetweenFormsAndTable() {
        UprightCylinder store = new UprightCylinder(Math.PI / 4 * 1.15 * 1.15 * 2.96, 2.96);
        TankLagging foam = TankLagging.allRound(new Lagging("elastomeric foam", 0.1));
        Standing at = new Standing(76, 25);
        double forms = TankLoss.of(store, foam, at).watts(at);
        double built = CoatedTank.without(store, foam, CoatFit.CLOSE_FITTING)
                .lossAt(at)
                .watts(at);
        assertEquals(284, forms, 42);
        assertTrue(built > 284 && built < 284 + 2.1 * 42, "as built " + built);
    }

    @Test
    void aBareTankLosesByTheFormsAlone() {
        UprightCylinder tank = twiceAsHigh(120);
        TankLoss forms = TankLoss.of(tank, TankLagging.BARE, TABLE_AT);
        for (CoatFit fit : CoatFit.values()) {
            assertEquals(forms, CoatedTank.without(tank, TankLagging.BARE, fit).lossAt(TABLE_AT));
        }
    }

    /** However thin and loose, a coat never lets through more than no coat. */
    @Test
    void aCoatIsNeverWorseThanNone() {
        UprightCylinder tank = twiceAsHigh(120);
        double bare = TankLoss.of(tank, TankLagging.BARE, TABLE_AT).totalWPerK();
        for (double mm : new double[] {0.1, 1, 3, 10, 30}) {
            TankLagging thin = TankLagging.allRound(new Lagging("stone wool", mm / 1000));
            double lost = CoatedTank.without(tank, thin, CoatFit.HAND_WRAPPED)
                    .lossAt(TABLE_AT)
                    .totalWPerK();
            assertTrue(lost <= bare + CoatFit.PORTS_W_PER_K, mm + " mm: " + lost);
        }
    }

    @Test
    void panesTakeTheCoatOffWhatTheyLookAt() {
        UprightCylinder tank = twiceAsHigh(120);
        TankLagging wool = TankLagging.allRound(new Lagging("stone wool", 0.08));
        CoatedTank whole = CoatedTank.without(tank, wool, CoatFit.CLOSE_FITTING);
        SeenFace face = tank.seenFrom(35);
        CoatedTank behind = whole.behindPanes(face, 20);
        assertEquals(face.surfaceM2(), behind.bareM2(), 1e-12);
        double sideBefore = whole.lossAt(TABLE_AT).sideWPerK() - CoatFit.PORTS_W_PER_K;
        assertEquals(sideBefore / 2, behind.lossAt(TABLE_AT).sideWPerK() - CoatFit.PORTS_W_PER_K, 1e-9);
        assertEquals(0, behind.lossAt(TABLE_AT).topWPerK());
        assertEquals(0.1, whole.behindPanes(face, 0.1).bareM2(), 1e-12);
        assertThrows(RefusedException.class, () -> whole.behindPanes(face, Double.NaN));
    }
}
