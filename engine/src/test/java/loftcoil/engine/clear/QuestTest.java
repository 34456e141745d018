package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.SafetyVerdict;
import org.junit.jupiter.api.Test;

/** Pairs of levers against one danger, judged quickly: what the whole search does only where single levers are not enough. */
class QuestTest {

    private static final Design HOT = Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "4");
    private static final Design UPPER_END = Changes.apply(Example.orchardBothy(), "coil.ends", "the upper end");

    private static Quest paired(Design design, CautionKind danger) {
        return paired(SafetyVerdict.quick(design), design, danger);
    }

    private static Quest paired(SafetyVerdict before, Design design, CautionKind danger) {
        Quest quest = new Quest(danger, new Judge(design, before), new HashMap<>());
        for (List<Runnable> next = quest.nextPairs(); !next.isEmpty(); next = quest.nextPairs()) {
            next.forEach(Runnable::run);
        }
        return quest;
    }

    private static List<Boolean> offered(Quest quest) {
        return Stream.generate(() -> quest.next().isPresent()).limit(3).toList();
    }

    @Test
    void twoPairsAreFoundAndNoMore() {
        assertEquals(
                List.of(true, true, false),
                offered(paired(Changes.apply(HOT, "loop.tube", "EN1057 15x0.7").withCoilHeatKW(9), CautionKind.BOIL)));
        assertEquals(List.of(true, true, false), offered(paired(UPPER_END, CautionKind.AIR)));
    }

    @Test
    void aDangerWithOneLeverHasNoPair() {
        assertEquals(List.of(false, false, false), offered(paired(HOT, CautionKind.COIL_JOINT)));
    }

    /** What is found for one danger is taken over for another only where it clears that too. */
    @Test
    void aWayIsAdoptedWhereItClears() {
        Design design = UPPER_END;
        Quest joint = paired(SafetyVerdict.whole(design), design, CautionKind.COIL_JOINT);
        List<Way> ways = Levers.ALL.stream()
                .filter(lever -> lever.clears().contains(CautionKind.COIL_JOINT) && !lever.conduct())
                .map(lever -> lever.way(lever.steps().of(design).get(0), 0))
                .toList();
        assertTrue(joint.open());

        joint.adopt(ways);

        assertEquals(ways, joint.ways());
        assertFalse(joint.open());
    }
}
