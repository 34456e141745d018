package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The spread of the estimates, the known heat, the table of a coil. */
class FireSpreadTest {

    private static final CoilInFire BOTHY = TestFires.with(TestFires.burn(), 1.6);

    /** About 40 % either way, the spread the method claims; a narrower one would claim knowledge nobody has. */
    @Test
    void aboutFortyPerCent() {
        LowMidHigh heat = FireSpread.coilW(BOTHY, TestFires.WATER);
        assertEquals(BOTHY.at(TestFires.WATER).heatW(), heat.mid());
        double down = 1 - heat.low() / heat.mid();
        double up = heat.high() / heat.mid() - 1;
        assertTrue(down > 0.3 && down < 0.55, "down " + down);
        assertTrue(up > 0.3 && up < 0.55, "up " + up);
    }

    @ParameterizedTest
    @EnumSource(FireDoubt.class)
    void everyDoubtMovesSomething(FireDoubt doubt) {
        FireBalance now = BOTHY.balance(TestFires.WATER);
        FireBalance low = doubt.atLow(BOTHY).balance(TestFires.WATER);
        FireBalance high = doubt.atHigh(BOTHY).balance(TestFires.WATER);
        assertTrue((low.flueC() - now.flueC()) * (high.flueC() - now.flueC()) < 0, doubt.name());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 5, 20, 50})
    void neverMoreThanTheFireReleases(double lengthM) {
        CoilInFire fire = TestFires.with(TestFires.burn(), lengthM);
        LowMidHigh heat = FireSpread.coilW(fire, TestFires.WATER);
        assertTrue(heat.low() >= 0 && heat.high() <= fire.burn().releasedW());
        assertTrue(FireSpread.flueC(fire, TestFires.WATER).low() >= TestFires.ROOM.tempC());
    }

    /** A fire at the edge of going out still has a spread. */
    @Test
    void edgeOfGoingOut() {
        Burn faint = new Burn(WoodTable.require("wood", "hardwood"), 50, 1, 4.4, 0.1);
        LowMidHigh heat = FireSpread.coilW(TestFires.with(faint, 1.6), TestFires.WATER);
        assertTrue(heat.low() < heat.mid() && heat.mid() < heat.high());
    }

    @Test
    void knownHeatCloses() {
        for (double asked : new double[] {0, 500, 2000, BOTHY.burn().releasedW()}) {
            FireBalance balance = BOTHY.accountOf(asked, TestFires.WATER).match(found -> found, over -> {
                throw new AssertionError("overdrawn by " + over.askedW());
            });
            assertEquals(asked, balance.coilW(), 1e-9);
            double sum = balance.unburntW() + balance.coilW() + balance.roomW() + balance.flueW();
            assertEquals(balance.fuelW(), sum, 1e-9 * balance.fuelW());
        }
    }

    /** The heat a coil is found to take, stated, leaves the flue as warm as the coil's own balance does: one split, not two. */
    @Test
    void aStatedHeatLeavesTheFlueOfTheBalance() {
        for (double lengthM : new double[] {1.6, 3, 6}) {
            CoilInFire fire = TestFires.with(TestFires.burn(), lengthM);
            FireBalance found = fire.balance(TestFires.WATER);
            double flueC =
                    fire.accountOf(found.coilW(), TestFires.WATER).match(FireBalance::flueC, overdrawn -> Double.NaN);
            assertEquals(found.flueC(), flueC, 0.01, lengthM + " m");
        }
    }

    @Test
    void moreThanTheFireHasIsOverdrawn() {
        double asked = BOTHY.burn().releasedW() + 1;
        OverdrawnFire over = BOTHY.accountOf(asked, TestFires.WATER)
                .match(
                        balance -> {
                            throw new AssertionError("balanced");
                        },
                        found -> found);
        assertEquals(asked, over.askedW());
        assertEquals(BOTHY.burn().releasedW(), over.releasedW());
        assertEquals(
                TestFires.ROOM.tempC(),
                FireSpread.flueC(BOTHY, 50_000, TestFires.WATER).mid());
    }

    /** The table keeps within the half per cent it states, and scales. */
    @Test
    void tableFollowsTheCoil() {
        CoilTable table = CoilTable.of(BOTHY);
        CoilTable twice = table.times(2);
        int points = 0;
        for (double flow = 1.1e-4; flow < 1.5; flow *= 1.9) {
            for (double inletC = 0.7; inletC < 110; inletC += 11.3) {
                double exact = BOTHY.at(flow, inletC).heatW();
                assertEquals(exact, table.heatW(flow, inletC), 0.005 * exact, flow + " kg/s, " + inletC + " °C");
                assertEquals(table.heatW(flow, inletC), table.heatW(-flow, inletC));
                assertEquals(2 * table.heatW(flow, inletC), twice.heatW(flow, inletC), 1e-9);
                points++;
            }
        }
        assertTrue(points > 100);
        assertEquals(table.heatW(1e-4, 40), table.heatW(0, 40));
        assertEquals(BOTHY.at(1e-4, 110).heatW(), table.heatW(1e-4, 110), 1e-6);
    }

    @Test
    void disorderIsNoEstimate() {
        assertThrows(IllegalArgumentException.class, () -> new LowMidHigh(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new LowMidHigh(0, Double.NaN, 3));
        assertEquals(new LowMidHigh(2, 2, 2), LowMidHigh.known(2));
    }
}
