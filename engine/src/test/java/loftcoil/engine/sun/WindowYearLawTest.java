package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import loftcoil.engine.gas.Atmosphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowYearLawTest {

    /** Bound on the table's error against the settled panes, W/m²; the largest met in 20 000 drawn points is below it. */
    private static final double TABLE_BOUND_W_PER_M2 = 0.5;

    private static final Place ORCHARD = new Place(46.2, 7.4, 620, 1);
    private static final Climate CLIMATE = new Climate(
            List.of(1.4, 2.3, 3.5, 4.6, 5.3, 6.0, 6.2, 5.3, 4.0, 2.6, 1.6, 1.2),
            List.of(-0.5, 1.2, 5.4, 9.3, 13.8, 17.2, 19.3, 18.6, 14.7, 9.8, 4.2, 0.6));
    private static final SkyYear SKY = SkyYear.of(ORCHARD, CLIMATE, 10);
    private static final Glazing WINDOW = Glazing.salvaged(3, 0.012, 0.92, new Facing(35, 180));
    private static final WindowYear YEAR = WindowYear.of(SKY, WINDOW);

    @Test
    void gainIsAPartOfWhatFallsOnTheWindow() {
        int bright = 0;
        for (int minute = 0; minute < SkyYear.MINUTES; minute += 7) {
            double gained = YEAR.absorbedWPerM2(minute);
            assertTrue(gained >= 0 && gained <= YEAR.tiltedWPerM2(minute), "minute " + minute);
            bright += gained > 100 ? 1 : 0;
        }
        assertTrue(bright > 1000, "only " + bright);
    }

    @Test
    void aLevelWindowReceivesTheGlobal() {
        WindowYear level = WindowYear.of(SKY, WINDOW.with(new Facing(0, 180)));
        for (int month = 1; month <= 12; month++) {
            assertEquals(CLIMATE.globalKWhPerM2Day().get(month - 1), level.tiltedKWhPerM2Day(month), 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0.02, 35", "3, 0.012, 35", "2, 0.05, 0", "3, 0.1, 60", "2, 0.006, 90"})
    void theTableFollowsTheSettledPanes(int panes, double gapM, double tiltDeg) {
        Glazing window = Glazing.salvaged(panes, gapM, 0.92, new Facing(tiltDeg, 180));
        WindowLoss exact = new WindowLoss(window, Atmosphere.pressurePa(620));
        WindowLossTable table =
                new WindowLossTable((surface, air) -> exact.open(surface, air).wPerM2(), -5, 35);
        Random random = new Random(20);
        double worst = 0;
        for (int i = 0; i < 4000; i++) {
            double surface = 110 * random.nextDouble();
            double air = -60 + 120 * random.nextDouble();
            worst = Math.max(
                    worst,
                    Math.abs(table.at(surface, air) - exact.open(surface, air).wPerM2()));
        }
        assertTrue(worst < TABLE_BOUND_W_PER_M2, "worst " + worst);
    }

    @ParameterizedTest
    @CsvSource({"30, 0", "50, 10", "70, 20", "90, 30", "40, -10"})
    void whatWarmPanesSpareIsNearTheLinearShare(double surfaceC, double airC) {
        WindowLoss loss = new WindowLoss(WINDOW, Atmosphere.pressurePa(620));
        List<Double> kept = new WindowLight(WINDOW.panes(), 0.92).at(20).panes();
        double[] inward = loss.inwardShares();
        double beam = 700;
        double linear = 0;
        for (int pane = 0; pane < inward.length; pane++) {
            linear += beam * kept.get(pane) * inward[pane];
        }
        List<Double> warmed = kept.stream().map(share -> beam * share).toList();
        double spared = loss.open(surfaceC, airC).wPerM2()
                - loss.inSun(surfaceC, airC, warmed).wPerM2();
        // As a part of all the tank gains from such a beam, about 430 W/m², this is under 3 %.
        assertEquals(spared, linear, 12);
    }

    @Test
    void aClosedShutterKeepsOutTheSunAndKeepsInTheHeat() {
        WindowYear year = WindowYear.of(SKY, WINDOW.with(new Shutter(1.1, 17, 15)));
        int june = 171 * 1440;
        int seven = june + 7 * 60;
        int noon = june + 12 * 60;
        assertTrue(year.isShut(seven) && !year.isShut(noon));
        assertEquals(0, year.absorbedWPerM2(seven));
        assertTrue(year.tiltedWPerM2(seven) > 0);
        assertEquals(YEAR.absorbedWPerM2(noon), year.absorbedWPerM2(noon));
        assertTrue(year.lossAtMinuteWPerM2(seven, 60) < 0.6 * YEAR.lossAtMinuteWPerM2(seven, 60));
        assertEquals(YEAR.lossAtMinuteWPerM2(noon, 60), year.lossAtMinuteWPerM2(noon, 60));
    }

    @Test
    void halvingTheStepMovesNoMonthByAFifthOfAPerCent() {
        WindowYear fine = WindowYear.of(SkyYear.of(ORCHARD, CLIMATE, 5), WINDOW);
        for (int month = 1; month <= 12; month++) {
            double here = YEAR.absorbedKWhPerM2Day(month);
            assertEquals(fine.absorbedKWhPerM2Day(month), here, 0.002 * here, "month " + month);
        }
    }

    @Test
    void lossAtAMinuteIsTheLossInThatMinutesAir() {
        for (int minute = 0; minute < SkyYear.MINUTES; minute += 9973) {
            assertEquals(YEAR.lossWPerM2(55, YEAR.airC(minute)), YEAR.lossAtMinuteWPerM2(minute, 55), 1e-12);
        }
    }
}
