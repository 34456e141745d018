package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Sheet;
import org.junit.jupiter.api.Test;

class RebuildLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final NamedValue HIGHER = new NamedValue("tank.baseM", "2.6");
    private static final NamedValue WIDER = new NamedValue("loop.tube", "EN1057 28x0.9");
    private static final NamedValue LAGGED = new NamedValue("loop.laggingMm", "50");
    private static final List<NamedValue> ALL = List.of(HIGHER, WIDER, LAGGED);

    @Test
    void aDesignComparedWithItselfDiffersInNothing() {
        Comparison same = Comparison.whole(BOTHY, BOTHY);
        assertTrue(same.rows().size() > 150, "only " + same.rows().size());
        for (Row row : same.rows()) {
            assertEquals(0, row.difference().orElseThrow(), row.key());
            assertEquals(Trend.SAME, row.turn(), row.key());
        }
        assertEquals(List.of(), same.changed());
        assertEquals(List.of(), same.cautionsRaised());
        assertEquals(List.of(), same.cautionsSettled());
    }

    @Test
    void turnedRoundEveryDifferenceChangesItsSign() {
        Design after = Rebuild.applied(BOTHY, ALL);
        Comparison there = Comparison.of(BOTHY, after);
        Comparison back = Comparison.of(after, BOTHY);
        assertEquals(there.rows().size(), back.rows().size());
        for (int i = 0; i < there.rows().size(); i++) {
            assertEquals(
                    there.rows().get(i).difference().orElseThrow(),
                    -back.rows().get(i).difference().orElseThrow(),
                    0.0,
                    there.rows().get(i).key());
        }
    }

    @Test
    void allTogetherIsTheDesignWithAllApplied() {
        Design after = Changes.apply(
                Changes.apply(Changes.apply(BOTHY, "tank.baseM", "2.6"), "loop.tube", "EN1057 28x0.9"),
                "loop.laggingMm",
                "50");
        Rebuild rebuild = Rebuild.of(BOTHY, ALL);
        assertEquals(
                Comparison.of(BOTHY, after), rebuild.together().comparison().orElseThrow());
    }

    @Test
    void eachAloneIsTheDesignWithThatOneApplied() {
        Rebuild rebuild = Rebuild.of(BOTHY, ALL);
        assertEquals(ALL, rebuild.effects().stream().map(Rebuild.Effect::change).toList());
        for (Rebuild.Effect effect : rebuild.effects()) {
            assertEquals(
                    Comparison.of(BOTHY, effect.change().appliedTo(BOTHY)),
                    effect.result().comparison().orElseThrow());
        }
    }

    @Test
    void noChangeAtAllIsNoDifference() {
        assertEquals(
                List.of(),
                Rebuild.of(BOTHY, List.of())
                        .together()
                        .comparison()
                        .orElseThrow()
                        .changed());
    }

    @Test
    void aChangeThatCannotBeDoneSaysWhyAndTheOthersAreStillTried() {
        NamedValue absurd = new NamedValue("tank.baseM", "99");
        Rebuild rebuild = Rebuild.of(BOTHY, List.of(absurd, WIDER));
        Rebuild.Refused refused =
                assertInstanceOf(Rebuild.Refused.class, rebuild.effects().get(0).result());
        assertEquals("tank.baseM", refused.faults().get(0).path());
        assertTrue(rebuild.effects().get(1).result().comparison().isPresent());
        assertInstanceOf(Rebuild.Refused.class, rebuild.together());
        assertThrows(RefusedException.class, () -> Rebuild.applied(BOTHY, List.of(absurd)));
    }

    @Test
    void theChangesBetweenTwoDesignsLeadFromTheOneToTheOther() {
        Design after = Rebuild.applied(BOTHY, List.of(HIGHER, LAGGED));
        List<NamedValue> between = NamedValue.between(BOTHY, after);
        assertTrue(between.containsAll(List.of(HIGHER, LAGGED)), between.toString());
        assertEquals(after, Rebuild.applied(BOTHY, between));
        assertEquals(List.of(), NamedValue.between(BOTHY, BOTHY));
    }

    @Test
    void itLeadsToADesignThatItsChangesMakeAndToNoOther() {
        Design after = Rebuild.applied(BOTHY, List.of(HIGHER, LAGGED));
        assertTrue(Rebuild.of(BOTHY, NamedValue.between(BOTHY, after)).leadsTo(Sheet.of(after)));
        assertFalse(Rebuild.of(BOTHY, List.of(HIGHER)).leadsTo(Sheet.of(BOTHY.withTankBaseM(2.7))));
        assertFalse(
                Rebuild.of(BOTHY, List.of(new NamedValue("tank.baseM", "99"))).leadsTo(Sheet.of(BOTHY)));
    }
}
