package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

class LoopPanelTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** Whose wood holds the heat that is asked of the coil. */
    private static final Design BRISK = Changes.apply(BOTHY, "fire.burnKgPerH", "10");

    @Test
    void aLoopThatBoilsIsADanger() {
        View.Design view = LoopPanel.view(BRISK.withCoilHeatKW(20).withTankBaseM(0.5), Units.METRIC);

        assertEquals("danger", view.safety().level());
        assertEquals("", view.circulates(), "told once, by the danger");
        assertTrue(
                view.safety().findings().stream().anyMatch(found -> found.code().equals("LC-BOIL")));
    }

    @Test
    void aTankBelowTheCoilIsADanger() {
        View.Design view = LoopPanel.view(BOTHY.withTankBaseM(-1), Units.METRIC);

        assertEquals("danger", view.safety().level());
        assertTrue(
                view.circulates().startsWith("With the whole tank at 40 °C: The loop does not circulate"),
                view.circulates());
    }

    /** Nothing was found so far, and that must not look like a design that is clear. */
    @Test
    void aLoopThatCirculatesIsNotClearBeforeStartsAndYearAreJudged() {
        View.Design view = LoopPanel.view(bent().withCoilHeatKW(1), Units.METRIC);
        View.Safety safety = view.safety();
        assertEquals("open", safety.level());
        assertEquals("Not judged yet", safety.label());
        assertTrue(safety.words().startsWith("Nothing was found so far. "), safety.words());
        assertEquals("How it starts and how its year goes are not judged yet.", safety.open());
        assertTrue(
                view.circulates().startsWith("With the whole tank at 40 °C: The loop circulates"), view.circulates());
        assertTrue(
                view.figures().stream()
                        .anyMatch(figure -> figure.label().equals("least distance from boiling, worst so far")),
                view.figures().toString());
    }

    /** A caution that was found may be topped, a danger may not. */
    @Test
    void aCautionIsOneSoFarBeforeAllIsJudged() {
        Design thin = Changes.apply(bent(), "coil.tube", "EN1057 22x0.9");
        assertEquals(
                "Caution so far",
                LoopPanel.view(thin.withCoilHeatKW(1), Units.METRIC).safety().label());
        assertEquals("Danger", LoopPanel.view(BOTHY, Units.METRIC).safety().label());
    }

    private static Design bent() {
        return Changes.apply(Changes.apply(BOTHY, "coil.turns", "bent from one length"), "coil.tube", "EN1057 22x1.2");
    }

    /** Elbows in the fire, of tube too thin for it; and a flue that may be too cool. */
    @Test
    void aCoilThatTheFireEatsIsADanger() {
        View.Safety safety = LoopPanel.view(BOTHY, Units.METRIC).safety();
        assertEquals("danger", safety.level());
        assertEquals(
                List.of("LC-COIL-JOINT", "LC-COIL-WALL", "LC-CREOSOTE"),
                safety.findings().stream().map(View.Finding::code).toList());
    }

    @Test
    void aColdCoilStandsWithoutDanger() {
        assertEquals(
                "open",
                LoopPanel.view(BOTHY.withCoilHeatKW(0), Units.METRIC).safety().level());
    }

    /** At 40 °C the loop goes round; late in the evening it boils, and the panel says so before any year is marched. */
    @Test
    void aLoopThatBoilsWithAHotTankIsADangerAtOnce() {
        View.Safety safety =
                LoopPanel.view(BRISK.withCoilHeatKW(7), Units.METRIC).safety();
        assertEquals("danger", safety.level());
        assertEquals("LC-BOIL-HARD", safety.findings().get(0).code());
    }
}
