package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoning;
import org.junit.jupiter.api.Test;

/** Two things are wanted: a tank above 1.5 m, and more than one pane. A stand-in reckons them from the design it is handed. */
class MendCheckTest {

    private static final Mend MEND = (Mend)
            ExerciseReader.read(
                    "16-faults/low",
                    "low.json",
                    """
            {"kind": "mend", "text": "t", "source": "s",
             "faulty": {"changes": {"tank.baseM": "-0.6", "window.panes": "1"}},
             "levers": [
               {"change": "tank.baseM", "from": -1, "to": 3, "by": 0.1},
               {"change": "window.panes", "from": 1, "to": 4, "by": 1},
               {"change": "loop.laggingMm", "from": 0, "to": 60, "by": 1},
               {"change": "tank.waterlineM", "from": 0.4, "to": 0.7, "by": 0.01},
               {"change": "tank.returnPortM", "from": 0.1, "to": 0.69, "by": 0.01},
               {"change": "vent.valve"}],
             "wanted": [{"java": "HIGH", "say": "The tank is high."}, {"java": "PANES", "say": "The panes are two."}],
             "mistakes": [
               {"changes": {"loop.laggingMm": "60"}, "because": "lagged it", "hint": "Lagging lifts nothing."},
               {"changes": {"loop.laggingMm": "60", "vent.valve": "a valve"}, "because": "both", "hint": "Both are vain."}],
             "solution": {"text": "t", "changes": {"tank.baseM": "2.2", "window.panes": "2"}}}
            """);

    private static final Map<String, Predicate<Design>> WANTED = Map.of(
            "HIGH", design -> design.tank().baseM() > 1.5,
            "PANES", design -> design.window().orElseThrow().panes() > 1);

    private static final Pattern HANDED = Pattern.compile(
            "\\(\\(ToDoubleFunction<Design>\\) design -> \\((\\w+)\\) .*DesignJson.read\\(\"(.*)\"\\)\\)",
            Pattern.DOTALL);

    private static final Reckoning STAND_IN = java -> {
        Matcher handed = HANDED.matcher(java);
        assertTrue(handed.matches(), java);
        Design design = DesignJson.read(handed.group(2).translateEscapes());
        return WANTED.get(handed.group(1)).test(design) ? 1 : 0;
    };

    private static Verdict verdict(String typed) {
        return Checker.check(MEND, typed, STAND_IN);
    }

    @Test
    void aSystemThatDoesAllIsRightHoweverItWasMended() {
        Verdict.Right right = assertInstanceOf(Verdict.Right.class, verdict("tank.baseM = 1.9; window.panes = 3"));
        assertEquals("tank.baseM = 1.9; window.panes = 3", right.taken().words());
        assertTrue(right.say().contains("- **Yes:** The tank is high."), right.say());
        assertTrue(!right.say().contains("without changing"), right.say());
    }

    @Test
    void whatIsMissingIsSaid() {
        Verdict.Wrong wrong = assertInstanceOf(Verdict.Wrong.class, verdict("tank.baseM=2.2"));
        assertTrue(wrong.hint().contains("- **Yes:** The tank is high."), wrong.hint());
        assertTrue(wrong.hint().contains("- **Not yet:** The panes are two."), wrong.hint());
        assertEquals("", wrong.mistake());
    }

    @Test
    void whatWasNotNeededIsNamed() {
        Verdict.Right right = assertInstanceOf(
                Verdict.Right.class,
                verdict("tank.baseM = 2\nwindow.panes = 2\nloop.laggingMm = 30\nvent.valve = a valve"));
        assertTrue(
                right.say()
                        .contains("without changing “Thickness of lagging on every leg” and “Valve in the open vent”"),
                right.say());
    }

    @Test
    void aKnownMistakeIsMetByWhatWasMovedAndWhichWay() {
        Verdict.Wrong lagged = assertInstanceOf(Verdict.Wrong.class, verdict("loop.laggingMm = 55"));
        assertEquals("lagged it", lagged.mistake());
        assertTrue(lagged.hint().endsWith("Lagging lifts nothing."), lagged.hint());
        assertEquals("", ((Verdict.Wrong) verdict("loop.laggingMm = 0")).mistake());
        assertEquals("both", ((Verdict.Wrong) verdict("loop.laggingMm = 55; vent.valve = a valve")).mistake());
    }

    @Test
    void aKnownMistakeIsNotSuspectedWhereMoreWasMoved() {
        Verdict.Wrong more = assertInstanceOf(Verdict.Wrong.class, verdict("loop.laggingMm = 55; window.panes = 2"));
        assertEquals("", more.mistake());
        assertTrue(!more.hint().contains("Lagging lifts nothing."), more.hint());
    }

    @Test
    void valuesAreReadAsTheyAreTyped() {
        assertEquals(Map.of("tank.baseM", "2.2"), MendTrial.moved(MEND, " tank.baseM = 2,2 m ;; "));
        assertEquals(Map.of("tank.baseM", "2.2"), MendTrial.moved(MEND, "tank.baseM=2.2m"));
        assertEquals(Map.of("tank.baseM", "-1"), MendTrial.moved(MEND, "tank.baseM = -1"));
        assertEquals(Map.of("tank.baseM", "-1"), MendTrial.moved(MEND, "tank.baseM = −1 m"));
        assertEquals(Map.of("vent.valve", "a valve"), MendTrial.moved(MEND, "vent.valve = A valve"));
        assertEquals(Map.of(), MendTrial.moved(MEND, "tank.baseM = -0.6"));
        assertEquals(
                "tank.baseM = 2; window.panes = 2",
                MendTrial.text(MendTrial.moved(MEND, "window.panes = 2; tank.baseM = 2.0")));
    }

    @Test
    void whatCannotBeReadIsToldWithWhatIsAllowed() {
        for (String bad : List.of(
                "tank.baseM = 9",
                "tank.baseM = high",
                "tank.baseM = NaN",
                "tank.baseM =",
                "tank = 2",
                "raise it",
                "vent.valve = maybe",
                "window.panes = 1.5")) {
            Verdict.Unreadable told = assertInstanceOf(Verdict.Unreadable.class, verdict(bad), bad);
            assertTrue(told.words().contains("allowed"), told.words());
        }
        assertInstanceOf(Verdict.Unreadable.class, verdict("  "));
        assertInstanceOf(Verdict.Unreadable.class, verdict("tank.baseM = -0.6"));
    }

    @Test
    void changesAreMadeInTheOrderInWhichTheyCanBe() {
        Map<String, String> both = MendTrial.moved(MEND, "tank.waterlineM = 0.69; tank.returnPortM = 0.67");
        assertEquals(0.67, MendTrial.design(MEND, both).tank().returnPortM());
        Map<String, String> bare = MendTrial.moved(MEND, "tank.returnPortM = 0.68");
        RefusedException refused = assertThrows(RefusedException.class, () -> MendTrial.design(MEND, bare));
        assertTrue(refused.getMessage().contains("tank.waterlineM"), refused.getMessage());
    }
}
