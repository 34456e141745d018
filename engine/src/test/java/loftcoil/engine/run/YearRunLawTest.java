package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.caution.YearFacts;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.tank.WaterHeat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Conservation, convergence and limits of a year. */
class YearRunLawTest {

    /** Most that a finer march may move a year's figures, as a share. */
    private static final double MOST_MOVED = 0.005;

    /** The same for its hottest water, K. */
    private static final double MOST_MOVED_K = 0.3;

    private static final Design BOTHY = Example.orchardBothy();
    private static final SystemPlan PLAN = plan(BOTHY);
    private static final YearRun YEAR = YearRun.of(PLAN);

    private static SystemPlan plan(Design design) {
        return SystemPlan.of(design, Pace.YEAR, Heatings.of(design));
    }

    private static Design bothy(boolean fire, boolean window, boolean use) {
        return new Design(
                BOTHY.name(),
                BOTHY.site(),
                BOTHY.tank(),
                BOTHY.coil(),
                fire ? BOTHY.fire() : Optional.empty(),
                BOTHY.coldLegs(),
                BOTHY.hotLegs(),
                window ? BOTHY.window() : Optional.empty(),
                BOTHY.taps(),
                use ? BOTHY.use() : List.of(),
                BOTHY.safety(),
                BOTHY.notes());
    }

    @Test
    void theAccountClosesForTheYearAndEachMonth() {
        double moved = YEAR.energy().solarKWh() + YEAR.energy().coilKWh();
        assertTrue(moved > 1000, "something moved");
        assertEquals(0, YEAR.energy().gapKWh(), 1e-9 * moved);
        for (MonthRow month : YEAR.months()) {
            assertEquals(0, month.energy().gapKWh(), 1e-9 * moved, "month " + month.month());
        }
    }

    @Test
    void theMonthsAddUpToTheYear() {
        assertEquals(12, YEAR.months().size());
        List<ToDoubleFunction<EnergyBook>> parts = List.of(
                EnergyBook::solarKWh,
                EnergyBook::coilKWh,
                EnergyBook::usedKWh,
                EnergyBook::lossKWh,
                EnergyBook::storedKWh);
        for (ToDoubleFunction<EnergyBook> part : parts) {
            double sum = YEAR.months().stream()
                    .mapToDouble(month -> part.applyAsDouble(month.energy()))
                    .sum();
            assertEquals(part.applyAsDouble(YEAR.energy()), sum, 1e-6);
        }
        assertEquals(YEAR.woodKg(), sum(MonthRow::woodKg), 1e-6);
        assertEquals(YEAR.shortfallKWh(), sum(MonthRow::shortfallKWh), 1e-6);
        assertEquals(YEAR.boilingMin(), sum(MonthRow::boilingMin), 1e-6);
    }

    private static double sum(ToDoubleFunction<MonthRow> figure) {
        return YEAR.months().stream().mapToDouble(figure).sum();
    }

    /** Four hours a day of 1.4 kg/h and 2 kW in the seven months named: plain multiplication. */
    @Test
    void woodAndCoilHeatFollowFromTheHours() {
        double hours = 4 * (31 + 28 + 31 + 30 + 31 + 30 + 31);
        assertEquals(1.4 * hours, YEAR.woodKg(), 1e-6);
        assertEquals(2.0 * hours, YEAR.energy().coilKWh(), 1e-6);
    }

    /** What is wanted is heat of the draws above 10 °C; what is not used of it is short. */
    @Test
    void usedAndShortAreWhatIsWanted() {
        double dailyJ = BOTHY.use().stream()
                .mapToDouble(use -> new loftcoil.engine.use.DrawOff(use.atH(), use.litres(), use.mixedC(), use.tap())
                        .wantedJ(BOTHY.site().coldSupplyC()))
                .sum();
        assertEquals(365 * dailyJ / 3.6e6, YEAR.energy().usedKWh() + YEAR.shortfallKWh(), 1e-6);
        double litres = BOTHY.use().stream().mapToDouble(use -> use.litres()).sum();
        Litres came = YEAR.litres();
        assertEquals(365 * litres, came.asWanted() + came.tooCool() + came.missing(), 1e-6);
    }

    @Test
    void halvingTheStepMovesNoFigureByHalfAPercent() {
        SystemPlan gentle = plan(BOTHY.withCoilHeatKW(0.8));
        YearRun usual = YearRun.of(gentle);
        YearRun finer = YearRun.of(gentle.with(Pace.YEAR.withStepS(Pace.YEAR.stepS() / 2)));
        assertClose(usual, finer, 0.005);
        assertEquals(finer.hottestC(), usual.hottestC(), YearFacts.BLUR_K);
    }

    /**
     * A step counts as boiling however little of its water flashes off, and in a tank at the boil that comes and goes from step to
     * step: the minutes are good to a sixth. What cools in a step is made up from the coil in the next before anything flashes, so
     * that longer steps count less steam: it is good to a twenty-fifth, and what the tank loses otherwise to a fiftieth.
     */
    @Test
    void halvingTheStepMovesBoilingMinutesByASixthAndSteamByATwentyFifth() {
        YearRun finer = YearRun.of(PLAN.with(Pace.YEAR.withStepS(Pace.YEAR.stepS() / 2)));
        assertEquals(finer.boilingMin(), YEAR.boilingMin(), finer.boilingMin() / 6);
        double steam = finer.energy().losses().steam();
        assertEquals(steam, YEAR.energy().losses().steam(), steam / 25);
        double tank = finer.energy().losses().tank();
        assertEquals(tank, YEAR.energy().losses().tank(), tank / 50);
    }

    private static void assertLike(YearRun finer, YearRun year) {
        double used = finer.energy().usedKWh();
        double lost = finer.energy().lossKWh();
        assertEquals(used, year.energy().usedKWh(), MOST_MOVED * used, "used");
        assertEquals(lost, year.energy().lossKWh(), MOST_MOVED * lost, "lost");
        assertEquals(finer.shortfallKWh(), year.shortfallKWh(), MOST_MOVED * finer.shortfallKWh(), "short");
        assertEquals(finer.hottestC(), year.hottestC(), MOST_MOVED_K, "hottest");
    }

    /** What layers blur: twice as many move used, lost and short by less than half a percent, the hottest water by 0.3 K. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.8, 1.2, 2.0})
    void doublingTheLayersMovesTheMainFiguresLittle(double heatKW) {
        SystemPlan plan = plan(BOTHY.withCoilHeatKW(heatKW));
        assertLike(YearRun.of(plan.with(Pace.YEAR.withLayers(2 * Pace.YEAR.layers()))), YearRun.of(plan));
    }

    /** Twice as many layers in steps half as long: thinner layers alone would blur less than they pass in a step. */
    private static void assertFinerMovesLittle(Design design) {
        SystemPlan plan = plan(design);
        Pace year = Pace.YEAR;
        Pace finer = new Pace(
                year.stepS() / 2,
                year.quietS(),
                2 * year.layers(),
                year.runInDays(),
                year.blockDays(),
                year.cutAtPorts());
        assertLike(YearRun.of(plan.with(finer)), YearRun.of(plan));
    }

    /** A taller tank, filled to the same share; its ports left where they are in the low one, or as high in it as there. */
    private static Design tall(double heightM, boolean lowPorts, double heatKW) {
        double times = heightM / BOTHY.tank().heightM();
        Design tall = raised(
                raised(BOTHY, "heightM", heightM), "waterlineM", BOTHY.tank().waterlineM() * times);
        if (!lowPorts) {
            tall = raised(tall, "drawPortM", BOTHY.tank().drawPortM() * times);
            tall = raised(tall, "returnPortM", BOTHY.tank().returnPortM() * times);
            tall = raised(tall, "coldPortM", BOTHY.tank().coldPortM() * times);
        }
        return tall.withCoilHeatKW(heatKW);
    }

    private static Design raised(Design design, String level, double levelM) {
        return Changes.apply(design, "tank." + level, Double.toString(levelM));
    }

    /** A tank as tall as it may be in a roof, its ports left where they are in the low one: what moves is least resolved there. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.8, 1.2})
    void inATallTankWithLowPortsAFinerMarchMovesThemAsLittle(double heatKW) {
        assertFinerMovesLittle(tall(1.8, true, heatKW));
    }

    @Tag("thorough")
    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.4, 1.8, 2.0})
    void inTanksOfAnyHeightAFinerMarchMovesThemAsLittle(double heightM) {
        for (double heatKW : new double[] {0.3, 0.5, 0.8, 1.2, 2.0}) {
            assertFinerMovesLittle(tall(heightM, true, heatKW));
            assertFinerMovesLittle(tall(heightM, false, heatKW));
        }
    }

    private static void assertClose(YearRun a, YearRun b, double relative) {
        List<ToDoubleFunction<YearRun>> figures = List.of(
                run -> run.energy().solarKWh(),
                run -> run.energy().coilKWh(),
                run -> run.energy().usedKWh(),
                run -> run.energy().lossKWh(),
                run -> run.energy().losses().window(),
                run -> run.energy().losses().tank(),
                YearRun::shortfallKWh,
                YearRun::woodKg);
        for (int i = 0; i < figures.size(); i++) {
            double one = figures.get(i).applyAsDouble(a);
            double other = figures.get(i).applyAsDouble(b);
            assertTrue(one != 0, "figure " + i + " says something");
            assertEquals(one, other, relative * Math.abs(one), "figure " + i);
        }
    }

    /** The settled year: the tank ends as it began, since the days before it were under the same climate. */
    @Test
    void aYearEndsAsItBegan() {
        assertEquals(0, YEAR.energy().storedKWh(), 1e-3);
    }

    @Test
    void withoutUseNothingIsUsed() {
        YearRun year = YearRun.of(plan(bothy(true, true, false)));
        assertEquals(0, year.energy().usedKWh());
        assertEquals(0, year.shortfallKWh());
        assertEquals(YEAR.energy().solarKWh(), year.energy().solarKWh(), 1e-9);
        assertTrue(year.energy().lossKWh() > YEAR.energy().lossKWh());
    }

    @Test
    void withoutFireThereIsNoWoodAndWithoutPanesNoSun() {
        YearRun cold = YearRun.of(plan(bothy(false, true, true)));
        assertEquals(0, cold.woodKg());
        assertEquals(0, cold.energy().coilKWh());
        assertTrue(cold.energy().solarKWh() > 100);
        assertTrue(cold.shortfallKWh() > YEAR.shortfallKWh());
        YearRun dark = YearRun.of(plan(bothy(true, false, true)));
        assertEquals(0, dark.energy().solarKWh());
        assertEquals(0, dark.energy().losses().window());
    }

    /** With no heat at all the tank ends at what is around it, give or take what the rooms' warmth drifts in by the loop. */
    @Test
    void withNothingTheTankSettlesBetweenLoftAndRoom() {
        DayRun day = DayRun.of(bothy(false, false, false), 6);
        double low = Math.min(BOTHY.tank().aroundC(), BOTHY.site().roomC());
        double high = Math.max(BOTHY.tank().aroundC(), BOTHY.site().roomC());
        for (double tempC : day.tankC(0.5)) {
            assertTrue(tempC > low - 0.2 && tempC < high + 0.2, tempC + " °C");
        }
    }

    @Test
    void moreHeatNeverLeavesLess() {
        double before = 0;
        for (double heatKW : new double[] {0, 0.5, 1, 2, 3}) {
            YearRun year = YearRun.of(plan(BOTHY.withCoilHeatKW(heatKW)));
            assertTrue(
                    year.energy().usedKWh() >= before - 0.5,
                    heatKW + " kW uses " + year.energy().usedKWh());
            before = year.energy().usedKWh();
        }
    }

    @Test
    void theInnerStepAllocatesNothing() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        SystemMarch march = new SystemMarch(PLAN);
        for (int day = 0; day < 60; day++) {
            march.day(day);
        }
        long thread = Thread.currentThread().getId();
        long stepsBefore = march.stepsTaken();
        long before = threads.getThreadAllocatedBytes(thread);
        for (int day = 60; day < 160; day++) {
            march.day(day);
        }
        long bytes = threads.getThreadAllocatedBytes(thread) - before;
        long steps = march.stepsTaken() - stepsBefore;
        // Asking for the count may itself cost a few bytes; one object in each step would cost sixteen times as many as
        // there are steps.
        assertTrue(steps > 4096 && bytes < 4096, bytes + " bytes in " + steps + " steps");
    }

    /** With the heat counted from 0 °C as one lump the tank holds what its layers hold. */
    @Test
    void heldHeatIsThatOfTheLayers() {
        SystemMarch march = new SystemMarch(PLAN);
        march.day(0);
        double sum = 0;
        for (int i = 0; i < march.tank().wet(); i++) {
            sum += march.tank().massKg(i)
                    * (WaterHeat.jPerKg(march.tank().tempC(i))
                            - WaterHeat.jPerKg(BOTHY.site().coldSupplyC()));
        }
        assertEquals(sum, march.totals().heldJ(), 1e-6 * Math.abs(sum) + 1);
        assertEquals(OptionalDouble.empty(), PLAN.refillAtH());
    }
}
