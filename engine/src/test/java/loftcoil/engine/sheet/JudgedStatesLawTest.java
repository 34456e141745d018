package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.HarderCase;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worst state against a fine walk over tanks and fires that is made here, not there. */
class JudgedStatesLawTest {

    static Stream<Design> designs() {
        Design bothy = Example.orchardBothy();
        return Stream.of(
                bothy,
                Changes.apply(bothy, "coil.heat", "worked out from the fire"),
                bothy.withCoilHeatKW(3.6),
                bothy.withLoopTube("EN1057 15x1.0"),
                bothy.withTankBaseM(1.2));
    }

    /** Nothing between the tanks and fires that are looked at is worse than what is told by more than a tenth of a kelvin. */
    @ParameterizedTest
    @MethodSource("designs")
    void theWorstIsTheWorstOfAFineWalk(Design design) {
        JudgedStates judged = judged(design, OptionalDouble.of(76));
        Circuit lit = design.circuit(40);
        double leastK = Double.POSITIVE_INFINITY;
        Optional<Double> boilsFromC = Optional.empty();
        for (double factor : new double[] {1, 1.25, 1.5}) {
            for (double tankC = 77; tankC >= design.site().coldSupplyC(); tankC -= 3) {
                FlowSearch search = design.coilHeating()
                        .times(factor)
                        .agreed(lit.withTankC(tankC))
                        .search();
                if (search.circulates()) {
                    leastK = Math.min(
                            leastK, search.forward().orElseThrow().boilMargin().marginK());
                } else if (factor == 1.5) {
                    boilsFromC = Optional.of(tankC);
                }
            }
        }
        HarderCase worst = judged.worst().orElseThrow();
        if (boilsFromC.isEmpty()) {
            assertTrue(worst.search().circulates(), worst.when().metric());
            assertEquals(leastK, JudgedStates.boilMarginK(worst), 0.1);
        } else {
            assertFalse(worst.search().circulates(), worst.when().metric());
            assertTrue(worst.heatFactor() == 1 || Math.abs(worst.tankC() - boilsFromC.get()) < 4, worst.toString());
        }
    }

    /** A coil whose heat is stated is judged under a stronger fire too: 5.5 kW are carried away, half as much again are not. */
    @Test
    void aStatedHeatIsJudgedUnderAStrongerFireToo() {
        Design strong = SafeBothy.design().withCoilHeatKW(5.5);
        assertTrue(strong.circuit(40).search().circulates()
                && strong.circuit(70).search().circulates());
        HarderCase worst = judged(strong, OptionalDouble.empty()).worst().orElseThrow();
        assertTrue(worst.search().circulation() instanceof Boils, worst.when().metric());
        assertEquals(1.5, worst.heatFactor());
        List<String> codes = codes(SafetyVerdict.quick(strong));
        assertTrue(codes.contains("LC-BOIL-HARD"), codes.toString());
    }

    /** The tank ends under its own boiling point, where no loop could be without boiling; nor is it milder in a cool year. */
    @Test
    void theHottestTankEndsUnderBoilingAndAtSeventyAtLeast() {
        Design design = SafeBothy.design().withCoilHeatKW(0.5);
        double boilingC = design.circuit(40).boilingC(design.tank().waterlineLevelM());
        assertEquals(boilingC - 6, tankC(design, OptionalDouble.of(boilingC)), 1e-9);
        assertEquals(81, tankC(design, OptionalDouble.of(80)), 1e-9);
        assertEquals(70, tankC(design, OptionalDouble.of(45)), 1e-9);
        assertEquals(70, tankC(design, OptionalDouble.empty()), 1e-9);
    }

    @Test
    void aColdCoilIsInNoState() {
        assertTrue(judged(SafeBothy.design().withCoilHeatKW(0), OptionalDouble.empty())
                .worst()
                .isEmpty());
    }

    /** Every figure of the worst stands in the sheet's JSON; where the loop boils the margin is nought. */
    @Test
    void theSheetTellsTheWorst() {
        String flows = SheetJson.write(Sheet.of(Example.orchardBothy()));
        assertTrue(flows.contains("\"worst\"") && flows.contains("\"heatFactor\" : 1.5"), flows);
        List<SheetFigure> boils = Figures.of(Sheet.of(SafeBothy.design().withCoilHeatKW(5.5))).stream()
                .filter(figure -> figure.group() == FigureGroup.WORST)
                .toList();
        assertEquals(
                List.of("worst.boilMarginK", "worst.tankC", "worst.heatFactor"),
                boils.stream().map(SheetFigure::key).toList());
        assertEquals(0, boils.get(0).value());
        assertEquals("the loop boils", boils.get(1).note());
    }

    private static double tankC(Design design, OptionalDouble hottestC) {
        return judged(design, hottestC).worst().orElseThrow().tankC();
    }

    private static JudgedStates judged(Design design, OptionalDouble hottestC) {
        Circuit lit = design.circuit(40);
        return JudgedStates.of(design, lit, HeatSpread.of(design, lit, lit.search()), hottestC);
    }

    private static List<String> codes(SafetyVerdict verdict) {
        return verdict.cautions().stream().map(Caution::code).toList();
    }
}
