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
        assertTrue(view.circulates().startsWith("The loop boils."), view.circulates());
        assertTrue(
                view.safety().findings().stream().anyMatch(found -> found.code().equals("LC-BOIL")));
    }

    @Test
    void aTankBelowTheCoilIsADanger() {
        View.Design view = LoopPanel.view(BOTHY.withTankBaseM(-1), Units.METRIC);

        assertEquals("danger", view.safety().level());
        assertTrue(view.circulates().startsWith("The loop does not circulate"), view.circulates());
    }

    @Test
    void aLoopThatCirculatesIsClearSoFarAndSaysThatTheYearIsOpen() {
        Design bent =
                Changes.apply(Changes.apply(BOTHY, "coil.turns", "bent from one length"), "coil.tube", "EN1057 22x1.2");
        View.Safety safety =
                LoopPanel.view(bent.withCoilHeatKW(1), Units.METRIC).safety();
        assertEquals("clear", safety.level());
        assertEquals("How it starts and how its year goes are not judged yet.", safety.open());
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
                "clear",
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
