package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.run.DayRun;
import loftcoil.engine.run.YearRun;
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
}
