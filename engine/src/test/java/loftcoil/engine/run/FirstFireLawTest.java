package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.loop.SteadyFlow;
import org.junit.jupiter.api.Test;

/** The first hour: its account closes, it settles to the steady search, and nothing runs ahead of the heat. */
class FirstFireLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final FirstFire HOUR = FirstFire.of(BOTHY);

    @Test
    void theAccountClosesToRounding() {
        FirstFire.HourBook book = HOUR.energy();
        assertEquals(2000 * 3600.0, book.coilJ(), 1e-3, "2 kW for an hour");
        assertEquals(0, book.gapJ(), 1e-7 * book.coilJ());
    }

    @Test
    void theAccountClosesWhereItBoilsToo() {
        FirstFire.HourBook book = FirstFire.of(BOTHY.withTankBaseM(-0.6)).energy();
        assertTrue(book.steamJ() > 0, "a coil above its tank boils");
        assertEquals(0, book.gapJ(), 1e-7 * book.coilJ());
    }

    @Test
    void aTankTooLargeToWarmSettlesToTheSteadyFlow() {
        Design large = SafeBothy.with("/tank/volumeL", "2000");
        SteadyFlow steady = large.circuit(10).search().forward().orElseThrow();
        FirstFire.Moment late = FirstFire.of(large).at(40);
        assertEquals(10, late.bottomC(), 0.2, "the bottom must still be cold for this comparison");
        // First order upwind cells of 0.1 m against the exact exponential of the search.
        assertEquals(steady.flowKgPerS(), late.flowKgPerS(), 0.005 * steady.flowKgPerS());
        assertEquals(steady.coil().endC(), late.coilOutC(), 0.1);
        assertEquals(steady.returnC(), late.returnC(), 0.1);
    }

    @Test
    void heatArrivesInTheOrderOfTheLoop() {
        double coil = firstAbove(HOUR.coilOutC(), 20);
        double riser = firstAbove(HOUR.returnC(), 20);
        double top = firstAbove(HOUR.topC(), 20);
        double middle = firstAbove(HOUR.middleC(), 20);
        assertTrue(coil < riser && riser < top && top < middle, coil + " " + riser + " " + top + " " + middle);
        assertEquals(10, HOUR.at(60).coilInC(), 0.5, "two kilowatts do not warm 113 L to the bottom in an hour");
    }

    /** The one road that the lessons teach: it starts as the high road does and keeps the night of the low one. */
    @Test
    void halfAMetreStraightUpStartsALowRoadAsAHighOne() {
        Design high = road(leg(1.71, 0.1), leg(0.09, 3));
        Design low = road(leg(0.09, 3), leg(1.71, 0.1));
        Design taught = road(leg(0.5, 0.1), leg(0.09, 2.9), leg(1.21, 0.1));
        assertEquals(58, peakC(high, 1), 0.5, "as lesson 9 has it");
        assertEquals(71, peakC(low, 1), 0.5, "as lesson 9 has it");
        assertEquals(66, peakC(high, 1.4), 0.5, "as lesson 9 has it");
        assertEquals(80, peakC(low, 1.4), 0.5, "as lesson 9 has it");
        assertEquals(peakC(high, 1), peakC(taught, 1), 1);
        assertEquals(peakC(high, 1.4), peakC(taught, 1.4), 1);
        assertEquals(nightW(low), nightW(taught), 0.5);
        assertTrue(nightW(high) > 4 * nightW(taught), "high " + nightW(high));
    }

    private static Design road(Leg... legs) {
        return BOTHY.withHotLegs(List.of(legs));
    }

    private static Leg leg(double riseM, double runM) {
        return BOTHY.hotLegs()
                .get(1)
                .withRiseM(riseM)
                .withLevelRunM(runM)
                .withLagging(Optional.of(LaggingChoice.stoneWool(19)))
                .named(riseM + " up, " + runM + " across");
    }

    private static double peakC(Design design, double heatTimes) {
        return Arrays.stream(FirstFire.of(design, heatTimes).coilOutC())
                .limit(200)
                .max()
                .orElseThrow();
    }

    private static double nightW(Design design) {
        return design.circuitFireOut(60)
                .search()
                .fromRest()
                .map(flow -> -flow.heat().tankW())
                .orElse(0.0);
    }

    @Test
    void moreHeatWarmsFaster() {
        FirstFire weak = FirstFire.of(BOTHY, 0.6);
        FirstFire strong = FirstFire.of(BOTHY, 1.4);
        for (double minute : new double[] {5, 20, 60}) {
            assertTrue(weak.at(minute).coilOutC() < HOUR.at(minute).coilOutC(), "at " + minute);
            assertTrue(HOUR.at(minute).coilOutC() < strong.at(minute).coilOutC(), "at " + minute);
            assertTrue(weak.at(minute).topC() < strong.at(minute).topC(), "at " + minute);
        }
    }

    @Test
    void withoutAnyHeatTheLoopStaysAsColdAsTheSupply() {
        Design mild = SafeBothy.edited(List.of(
                "/coil/heatKW", "0",
                "/site/coldSupplyC", "19",
                "/site/roomC", "19",
                "/tank/aroundC", "19",
                "/hotLegs/0/aroundC", "19"));
        FirstFire still = FirstFire.of(mild);
        // Not nought to the last digit: the loop's water is weighed by a table by heat, the tank's by one by
        // temperature. They differ
        // by up to 3e-5 kg/m³ (LiquidTableTest), which over the loop's 2 m is 6e-4 Pa where a fire drives with 100 Pa.
        assertEquals(0, Arrays.stream(still.flowLPerMin()).map(Math::abs).max().orElseThrow(), 1e-6);
        assertEquals(19, still.at(60).topC(), 1e-6);
        assertEquals(19, still.at(60).coilOutC(), 1e-6);
    }

    private static double firstAbove(double[] temperatures, double limitC) {
        double[] minutes = HOUR.minutes();
        for (int i = 0; i < temperatures.length; i++) {
            if (temperatures[i] > limitC) {
                return minutes[i];
            }
        }
        throw new AssertionError("never above " + limitC);
    }

    /** What an account misses is what came in less all that went out. */
    @Test
    void anAccountThatDoesNotCloseSaysByHowMuch() {
        assertEquals(4, new FirstFire.HourBook(100, 10, 50, 5, 11, 20).gapJ(), 1e-12);
    }
}
