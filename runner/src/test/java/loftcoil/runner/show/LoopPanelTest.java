package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

class LoopPanelTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void aLoopThatBoilsSaysSoOnceAndAsADanger() {
        View.Design view = LoopPanel.view(BOTHY.withCoilHeatKW(20).withTankBaseM(0.5));

        assertTrue(view.danger());
        assertTrue(view.circulates().startsWith("The loop boils."), view.circulates());
        assertEquals(
                "Ask first: local code and a licensed installer.",
                view.cautions().get(0));
        assertTrue(view.cautions().stream().noneMatch(caution -> caution.contains("The loop boils.")));
    }

    @Test
    void aTankBelowTheCoilIsADanger() {
        View.Design view = LoopPanel.view(BOTHY.withTankBaseM(-1));

        assertTrue(view.danger());
        assertTrue(view.circulates().startsWith("The loop does not circulate"), view.circulates());
    }

    @Test
    void aLoopThatCirculatesIsNone() {
        assertFalse(LoopPanel.view(BOTHY).danger());
    }

    @Test
    void aColdCoilStandsWithoutDanger() {
        assertFalse(LoopPanel.view(BOTHY.withCoilHeatKW(0)).danger());
    }
}
