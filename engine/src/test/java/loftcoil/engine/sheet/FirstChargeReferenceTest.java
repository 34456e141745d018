package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.run.FirstFire;
import org.junit.jupiter.api.Test;

/** The weighed charge of the first fire against sums by hand, and what a charge of that weight does. */
class FirstChargeReferenceTest {

    /**
     * The bothy by hand: 1.6 m of 22 x 0.9 mm tube hold pi/4 (20.2 mm)² 1.6 m = 0.5128 L; boiling at 620 m is 97.9 °C, water of
     * 98 °C weighs 0.9598 kg/L and has 4.19 kJ/(kg K) on the way from 10 °C; evaporation 2256.5 kJ/kg (IAPWS-IF97; steam tables to
     * 0.1 kJ). Spruce, the richest of the table: 19.45 MJ/kg dry.
     */
    @Test
    void theBothyByHand() {
        double waterKg = Math.PI / 4 * 0.0202 * 0.0202 * 1.6 * 1000 * 0.9598;
        double toSteamKJ = 4.19 * (97.9 - 10) + 2256.5;
        FirstCharge charge = FirstCharge.of(Example.orchardBothy());
        assertEquals(waterKg, charge.coilWaterKg(), 0.0005);
        assertEquals(toSteamKJ, charge.toSteamJPerKg() / 1000, 3);
        assertEquals(0.5, charge.share());
        assertEquals(1000 * waterKg * toSteamKJ / (19450 * 0.5), charge.chargeG(), 0.3);
        assertEquals(133, charge.chargeG(), 1);
    }

    /** A stated 6 kW of 7.5 kW of wood may be more by four tenths, which is more than all of it. */
    @Test
    void aGreatShareMakesTheChargeSmall() {
        Design great =
                Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "1.8").withCoilHeatKW(6);
        FirstCharge charge = FirstCharge.of(great);
        assertEquals(1, charge.share());
        assertEquals(FirstCharge.of(Example.orchardBothy()).chargeG() / 2, charge.chargeG(), 1e-9);
    }

    @Test
    void noFireDescribedIsReckonedWithHalf() {
        Design plain = SafeBothy.edited(List.of("/fire", "null", "/coil/heatKW", "1.5"));
        assertEquals(0.5, FirstCharge.of(plain).share());
    }

    /** Nothing in it can make the charge too large: all its heat, at the share, is that of the coil's water gone. */
    @Test
    void theBalanceCloses() {
        for (double lengthM : new double[] {0.5, 1.6, 4}) {
            FirstCharge charge = FirstCharge.of(Example.orchardBothy().withCoilLengthM(lengthM));
            double intoCoilJ = charge.chargeG() / 1000 * charge.woodJPerKg() * charge.share();
            assertEquals(charge.coilWaterKg() * charge.toSteamJPerKg(), intoCoilJ, 1e-6 * intoCoilJ);
        }
    }

    /** It has to be good for something: burnt at a third of the rate it makes the hot leg warm to its top before it is gone. */
    @Test
    void theChargeShowsWhetherTheLoopRuns() {
        Design bothy = Example.orchardBothy();
        double thirdKgPerH = bothy.fire().orElseThrow().burnKgPerH() / 3;
        double burnsMin = FirstCharge.of(bothy).chargeG() / 1000 / thirdKgPerH * 60;
        OptionalDouble warmMin = FirstFire.of(bothy, 1.0 / 3).moments().stream()
                .filter(moment -> moment.returnC() > bothy.site().coldSupplyC() + 10)
                .mapToDouble(FirstFire.Moment::minute)
                .findFirst();
        assertTrue(warmMin.orElse(Double.POSITIVE_INFINITY) < burnsMin, warmMin + " of " + burnsMin);
    }

    @Test
    void onlyALitCoilHasOne() {
        assertTrue(Sheet.of(Example.orchardBothy()).firstCharge().isPresent());
        assertTrue(Sheet.of(SafeBothy.edited(List.of("/coil/heatKW", "0", "/fire", "null")))
                .firstCharge()
                .isEmpty());
    }
}
