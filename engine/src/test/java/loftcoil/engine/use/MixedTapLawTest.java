package loftcoil.engine.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.Ports;
import loftcoil.engine.tank.UprightCylinder;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MixedTapLawTest {

    private static Layers tank(double startC) {
        Ports ports = new Ports(0.05, 0.35, 0.60, 0.66, 0.02);
        return new Layers(new LayerPlan(new UprightCylinder(0.12, 0.7), ports, 24, startC, 98));
    }

    @Test
    void aHotTankGivesWhatIsWantedAndCountsTheShares() {
        MixedTap tap = new MixedTap(true);
        tap.draw(tank(60), 20, 40, 10);
        assertEquals(20, tap.asWantedKg(), 1e-9);
        assertEquals(20 * Mixing.hotShare(60, 10, 40), tap.hotKg(), 1e-9);
        assertEquals(20, tap.hotKg() + tap.coldKg(), 1e-9);
        assertEquals(0, tap.shortJ(), 1e-6);
        assertEquals(tap.wantedJ(), tap.usedJ(), 1e-6);
    }

    @Test
    void aCoolTankGivesAllItHasAndCountsWhatIsShort() {
        MixedTap tap = new MixedTap(true);
        tap.draw(tank(30), 10, 40, 10);
        assertEquals(10, tap.tooCoolKg(), 1e-9);
        assertEquals(10 * (WaterHeat.jPerKg(40) - WaterHeat.jPerKg(30)), tap.shortJ(), 1e-3);
    }

    @Test
    void aTankThatRunsDownLeavesTheRestMissing() {
        MixedTap tap = new MixedTap(false);
        tap.draw(tank(60), 100, 60, 10);
        assertEquals(0.06 * 0.12 / 0.7 * Water.densityKgPerM3(10), tap.hotKg(), 1e-6);
        assertTrue(tap.missingKg() > 88 && tap.shortJ() > 0);
        assertEquals(tap.wantedJ(), tap.usedJ() + tap.shortJ(), 1e-9 * tap.wantedJ());
    }

    @Property(tries = 500)
    void wantedIsDeliveredOrShort(
            @ForAll @DoubleRange(min = 5, max = 95) double tankC,
            @ForAll @DoubleRange(min = 0, max = 300) double kg,
            @ForAll @DoubleRange(min = 21, max = 95) double wantedC,
            @ForAll @DoubleRange(min = 0, max = 20) double coldC,
            @ForAll boolean refilled) {
        Layers tank = tank(tankC);
        MixedTap tap = new MixedTap(refilled);
        tap.draw(tank, kg, wantedC, coldC);
        assertEquals(tap.wantedJ(), tap.usedJ() + tap.shortJ(), 1e-9 * (1e6 + tap.wantedJ()));
        double carried = tank.ledger().drawnJ() - tank.ledger().drawnKg() * WaterHeat.jPerKg(coldC);
        assertEquals(carried, tap.usedJ(), 1e-9 * (1e6 + Math.abs(carried)), "what the tank gave is what was used");
        assertTrue(tap.hotKg() >= 0 && tap.coldKg() >= 0 && tap.shortJ() >= -1e-6);
    }

    @Test
    void refusesWhatIsNotANumber() {
        MixedTap tap = new MixedTap(true);
        assertThrows(RefusedException.class, () -> tap.draw(tank(50), Double.NaN, 40, 10));
        assertThrows(RefusedException.class, () -> tap.draw(tank(50), 1, 40, Double.NaN));
    }
}
