package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.study.ProgressListener;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ClearSearchTest {

    private static final Design SEVEN_KW =
            Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "4").withCoilHeatKW(7);

    @Test
    void followingTheFirstThatIsOfferedTheBothyEndsWithoutThatDanger() {
        Clears clears = Following.holds(Example.orchardBothy());
        assertTrue(clears.complete());
        assertTrue(clears.wholeVerdicts() <= ClearSearch.MOST_WHOLE, () -> "took " + clears.wholeVerdicts());
        assertEquals(
                "a coil bent from one length, without a joint in the fire",
                clears.of(CautionKind.COIL_JOINT)
                        .orElseThrow()
                        .ways()
                        .get(0)
                        .words()
                        .metric());
        assertEquals(
                List.of("taps.mixer"),
                clears.of(CautionKind.SCALD).orElseThrow().ways().get(0).changes().stream()
                        .map(change -> change.name())
                        .toList());
    }

    @Test
    @Tag("thorough")
    void soDoesABothyWithSevenKilowattAndItIsTheSameEachTime() {
        Clears once = Following.holds(SEVEN_KW);
        assertEquals(once, ClearSearch.of(SEVEN_KW));
        assertFalse(once.of(CautionKind.COIL_JOINT).orElseThrow().ways().isEmpty());
    }

    @Test
    void aDesignWithoutDangerIsNotSearched() {
        Design bare = Example.orchardBothy().withCoilHeatKW(0).withTapMixer("set to 45 °C");
        assertEquals(List.of(), SafetyVerdict.whole(bare).of(Severity.DANGER));
        assertEquals(new Clears(bare, List.of(), true, 0), ClearSearch.of(bare));
    }

    @Test
    void itTellsHowFarItIsAndEndsWhenItIsToldTo() {
        AtomicInteger last = new AtomicInteger();
        Clears stopped = ClearSearch.of(SEVEN_KW, new ProgressListener() {
            @Override
            public void done(int done, int of) {
                assertTrue(done >= last.get() && done <= of, done + " of " + of);
                last.set(done);
            }

            @Override
            public boolean cancelled() {
                return last.get() >= 3;
            }
        });
        assertFalse(stopped.complete());
        assertEquals(0, stopped.wholeVerdicts());
        assertEquals(List.of(), stopped.dangers(), "of what was not searched nothing may say that nothing was found");
        assertTrue(last.get() >= 3 && last.get() <= 5, () -> "told of " + last.get());
    }

    @Test
    void whatAnInterruptedSearchFoundStands() {
        Thread.currentThread().interrupt();
        Clears stopped = ClearSearch.of(SEVEN_KW);
        assertTrue(Thread.interrupted());
        assertFalse(stopped.complete());
    }

    /** Nobody is told to move a danger elsewhere: what comes of a way is part of what stood before. */
    @Test
    @Tag("thorough")
    void noWayBringsADangerOrCautionThatWasNotThere() {
        Design valve = Changes.apply(Example.orchardBothy(), "loop.valves", "1");
        Set<CautionKind> before = kinds(valve);
        Clears clears = Following.holds(valve);
        for (Cleared danger : clears.dangers()) {
            for (Way way : danger.ways()) {
                Set<CautionKind> come = kinds(way.appliedTo(valve));
                come.removeAll(before);
                assertEquals(Set.of(), come, () -> way.words().metric());
            }
        }
    }

    @Test
    @Tag("thorough")
    void theOtherWayRoundIsOfferedWhereThatIsAllThatIsWrong() {
        Design design =
                DesignJson.read(DesignJson.write(Changes.apply(Example.orchardBothy(), "coil.ends", "the upper end")));
        Cleared air = ClearSearch.of(design).of(CautionKind.AIR).orElseThrow();
        assertEquals("coil.ends", air.ways().get(0).changes().get(0).name());
    }

    private static Set<CautionKind> kinds(Design design) {
        return SafetyVerdict.whole(design).cautions().stream()
                .filter(caution -> caution.severity() != Severity.NOTE)
                .map(Caution::kind)
                .collect(Collectors.toSet());
    }
}
