package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.run.DayRun;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Starts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pipes that run outdoors. */
class OutdoorsLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final Design OUTDOORS =
            Changes.apply(Changes.apply(BOTHY, "coldLegs[1].outdoors", "true"), "hotLegs[1].outdoors", "true");

    private static Design around(String airC) {
        Design design = BOTHY;
        for (String leg : List.of("coldLegs[1]", "hotLegs[1]")) {
            design = Changes.apply(design, leg + ".aroundC", airC);
            design = Changes.apply(design, leg + ".aroundFireOutC", airC);
        }
        return design;
    }

    private static Design inAir(Design design, double airC) {
        return Changes.apply(
                design,
                "site.monthly.meanAirC",
                Collections.nCopies(12, airC).stream().map(Object::toString).collect(Collectors.joining(", ")));
    }

    @Test
    void airThatNeverChangesIsAStatedTemperature() {
        assertEquals(YearRun.of(inAir(around("4"), 4)), YearRun.of(inAir(OUTDOORS, 4)));
        assertEquals(
                Sheet.of(inAir(around("4"), 4)).loop(),
                Sheet.of(inAir(OUTDOORS, 4)).loop());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 4, 11})
    void aMonthIsThatOfItsOwnAir(int month) {
        double airC = BOTHY.site().monthly().meanAirC().get(month - 1);
        double[] own = DayRun.of(around(Double.toString(airC)), month).tankC(0.9);
        double[] out = DayRun.of(OUTDOORS, month).tankC(0.9);

        // Days of the month before are among those that lead up to its middle; loss and push are straight lines to
        // within this.
        for (int i = 0; i < own.length; i++) {
            assertEquals(own[i], out[i], 0.3, "moment " + i);
        }
    }

    @Test
    void aYearLosesMoreThanInTheHouseAndLessThanInTheColdestMonthAllYear() {
        double house = YearRun.of(BOTHY).energy().losses().legsLit();
        double year = YearRun.of(OUTDOORS).energy().losses().legsLit();
        double coldest = YearRun.of(around("-0.5")).energy().losses().legsLit();

        assertTrue(house < year && year < coldest, house + ", " + year + ", " + coldest);
    }

    @Test
    void itFreezesAsTheNightIsNotAsTheMonth() {
        assertEquals(-16.5, ColdNight.of(OUTDOORS).around(OUTDOORS.coldLegs().get(1)));
        assertTrue(kinds(OUTDOORS).contains(CautionKind.FROST_LOOP));
        Design mild = Changes.apply(inAir(OUTDOORS, 12), "site.coldestNightC", "9");
        assertTrue(!kinds(mild).contains(CautionKind.FROST_LOOP));
    }

    private static List<CautionKind> kinds(Design design) {
        return SafetyVerdict.quick(design).cautions().stream()
                .map(caution -> caution.kind())
                .toList();
    }

    @Test
    void theVerdictLooksAtTheWorstOfTheAirThereIs() {
        double worst = marginK(OUTDOORS);

        for (double airC : new double[] {-16.5, Outdoors.usualC(OUTDOORS), Outdoors.warmestLitC(OUTDOORS)}) {
            assertTrue(worst <= marginK(around(Double.toString(airC))) + 1e-9, airC + " °C");
        }
    }

    private static double marginK(Design design) {
        return JudgedStates.boilMarginK(Sheet.of(design).states().worst().orElseThrow());
    }

    @Test
    void steadyFiguresTakeTheMonthsOfFire() {
        assertEquals((-0.5 + 1.2 + 5.4 + 9.3 + 9.8 + 4.2 + 0.6) / 7, Outdoors.usualC(BOTHY), 1e-9);
        assertEquals(-0.5, Outdoors.coldestLitC(BOTHY));
        assertEquals(9.8, Outdoors.warmestLitC(BOTHY));
    }

    /** In the week the pipes have that week's air round them, five kelvin over the month's, and not a room's. */
    @Test
    void aClearWeekHasItsOwnAirRoundThePipes() {
        double out = clearWeekC(inAir(OUTDOORS, -8));

        // The tank's temperature when the week begins is that of its month: no more than this apart.
        assertEquals(clearWeekC(inAir(around("-3"), -8)), out, 0.02);
        assertTrue(clearWeekC(inAir(around("-8"), -8)) < out - 0.1, "the month's air is cooler");
        assertTrue(clearWeekC(inAir(BOTHY, -8)) > out + 0.3, "the house is warmer");
    }

    /** A dull week is told at its month's mean air. */
    @Test
    void aDullWeekHasItsMonthsAirRoundThePipes() {
        assertEquals(
                YearSpread.of(lit(inAir(around("12"), 12))).weeks().dull(),
                YearSpread.of(lit(inAir(OUTDOORS, 12))).weeks().dull());
    }

    @Test
    void aFireIsTriedAfterTheColdestNightOfItsMonths() {
        assertEquals(-16.5, ColdNight.of(OUTDOORS).litNightC(), "lit in January");
        assertEquals(starts(around("-16.5")), starts(OUTDOORS));
        Design spring = Changes.apply(OUTDOORS, "fire.months", "March to October");
        assertEquals(5.4 - 16, ColdNight.of(spring).litNightC(), 1e-9);
    }

    private static Optional<Starts> starts(Design design) {
        return SafetyVerdict.starts(design, Optional.empty());
    }

    /** A fire all year, so weak that no tank comes near boiling, where all weeks would be alike. */
    private static Design lit(Design design) {
        return Changes.apply(
                Changes.apply(Changes.apply(design, "fire.months", "all year"), "coil.heatKW", "0.4"),
                "tank.volumeL",
                "200");
    }

    private static double clearWeekC(Design design) {
        return YearSpread.of(lit(design)).weeks().clear().orElseThrow().hottestTankC();
    }
}
