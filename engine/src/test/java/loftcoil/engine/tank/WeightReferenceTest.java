package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weight and growth against published figures; statics against hand-worked moments. */
class WeightReferenceTest {

    private static final UprightCylinder TANK = new UprightCylinder(0.12, 0.70);

    /** FSEC-1679, Florida Solar Energy Center: a litre weighs a kilogram, 300 litres of water 300 kg. */
    @Test
    void threeHundredLitresWeighThreeHundredKilograms() {
        assertEquals(300, FullWeight.of(new UprightCylinder(0.3, 1), 0).massKg(), 0.5);
    }

    /** FSEC-1679: a system of 100 US gallons weighs about 1000 lb full, so about 166 lb of it is tank and collector. */
    @Test
    void hundredGallonsWithATankOfHundredSixtyPoundsWeighThousandPounds() {
        double kg = FullWeight.of(new UprightCylinder(0.378541, 1.2), 166 * 0.45359237)
                .massKg();
        assertEquals(1000, kg / 0.45359237, 2);
    }

    /** From densities of IAPWS SR6-08(2011): 1.679 % from 10 to 60 °C and 4.343 % from 4 to 100 °C (handbooks: about 4 %). */
    @ParameterizedTest
    @CsvSource({"10, 60, 1.679", "4, 100, 4.343"})
    void waterGrowsAsItsDensityFalls(double fromC, double toC, double percent) {
        assertEquals(percent, 100 * Expansion.growthM3(1, fromC, toC), 0.005);
    }

    /** Densities from the steam tables, 999.70 at 10 °C and 965.3 at 90 °C: 120 L grow by 4.28 L. */
    @Test
    void hundredTwentyLitresNeedFourLitresOfRoom() {
        assertEquals(120 * (999.70 / 965.30 - 1), 1000 * Expansion.growthM3(0.12, 10, 90), 0.01);
    }

    @Test
    void weightSpreadsOverFootprintAndBearers() {
        FullWeight full = FullWeight.of(TANK, 24);
        assertEquals(143.96, full.massKg(), 0.01);
        assertEquals(143.96 * 9.80665, full.forceN(), 0.1);
        assertEquals(full.forceN() / 1000 / (0.12 / 0.70), full.pressureKNPerM2(), 1e-9);
        assertEquals(full.forceN() / 3, full.perBearerN(3), 1e-9);
        assertEquals(full.forceN() / 3000 / (0.05 * 0.5), full.underBearersKNPerM2(3, 0.05, 0.5), 1e-9);
    }

    @Test
    void safeLevelCoversThePortAndItsMargin() {
        SafeLevel safe = SafeLevel.of(TANK, new Ports(0.05, 0.35, 0.60, 0.66, 0.0202), SafeLevel.USUAL_COVER_M);
        assertEquals(0.35 + 0.0101 + 0.05, safe.leastM(), 1e-12);
        assertEquals((0.66 - safe.leastM()) * 0.12 / 0.70, safe.spareM3(), 1e-12);
        assertTrue(
                SafeLevel.of(TANK, new Ports(0.05, 0.60, 0.5, 0.62, 0.02), 0.05).spareM3() < 0);
    }

    @Test
    void refusesAPortThatCannotBeCovered() {
        Ports ports = new Ports(0.05, 0.69, 0.6, 0.66, 0.02);
        RefusedException refused = assertThrows(RefusedException.class, () -> SafeLevel.of(TANK, ports, 0.05));
        assertEquals("returnM", refused.faults().get(0).path());
    }

    /** Worked by hand: 1000 kg 0.5 m ahead of the axle, 200 kg 2 m ahead and 0.3 m aside at 3 m, hitch 4 m ahead, track 2 m. */
    @Test
    void momentsOfATankOnWheels() {
        double g = 9.80665;
        WheelLoad load =
                WheelLoad.of(new Trailer(1000, 1.2, 0.5, 4, 2), new FullWeight(180, 20, 0.2), new TankPlace(3, 2, 0.3));
        assertEquals((1000 * 0.5 + 200 * 2) / 4 * g, load.hitchN(), 1e-6);
        assertEquals(1200 * g - load.hitchN(), load.axleN(), 1e-6);
        assertEquals(1 - 225.0 / 1200, load.axleShare(), 1e-12);
        assertEquals(2 * 200 * 0.3 / 2 * g, load.heavierSideN() - load.lighterSideN(), 1e-6);
        assertEquals(Math.toDegrees(Math.atan((1 - 0.05) / 1.5)), load.tipsAtDeg(), 1e-9);
    }

    @Test
    void aTankBehindTheAxleLiftsTheHitchAndATopHeavyOneTipsSooner() {
        Trailer dwelling = new Trailer(600, 1, 0.1, 3, 1.8);
        FullWeight tank = FullWeight.of(TANK, 24);
        assertTrue(WheelLoad.of(dwelling, tank, new TankPlace(2.5, -2, 0)).hitchN() < 0);
        double low = WheelLoad.of(dwelling, tank, new TankPlace(0.5, 0, 0)).tipsAtDeg();
        double high = WheelLoad.of(dwelling, tank, new TankPlace(3, 0, 0)).tipsAtDeg();
        assertTrue(high < low, low + " against " + high);
    }

    @Test
    void refusesADwellingThatCannotBeNamingEveryFault() {
        RefusedException refused = assertThrows(RefusedException.class, () -> new Trailer(-1, Double.NaN, 0, 0, 9));
        assertEquals(4, refused.faults().size());
    }
}
