package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.runner.check.MendTrial;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.FaultySystem;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Variation;
import org.junit.jupiter.api.Test;

/** The faulty systems of the course: the cause is asked for first, nothing gives it away, and what is mended is safe. */
class FaultySystemsTest {

    private static final List<Mend> SYSTEMS = CourseReader.builtIn().exercises().values().stream()
            .filter(Mend.class::isInstance)
            .map(Mend.class::cast)
            .toList();

    @Test
    void thereAreFifteenSomeWithTwoFaultsSomeWithNone() {
        assertTrue(SYSTEMS.size() >= 15, SYSTEMS.size() + " systems");
        assertTrue(SYSTEMS.stream().allMatch(Mend::diagnosed));
        assertTrue(SYSTEMS.stream().filter(mend -> mend.mended().isEmpty()).count() >= 2);
        assertTrue(SYSTEMS.stream()
                        .filter(mend -> mend.causes().stream()
                                .anyMatch(cause -> cause.right() && cause.text().startsWith("Two faults")))
                        .filter(mend -> mend.mended().size() == 2)
                        .count()
                >= 2);
    }

    @Test
    void noCauseIsToldByItsLength() {
        for (Mend mend : SYSTEMS) {
            List<Integer> lengths = mend.causes().stream()
                    .map(cause -> cause.text().length())
                    .sorted()
                    .toList();
            assertTrue(lengths.get(lengths.size() - 1) <= 1.35 * lengths.get(0), mend.path() + " " + lengths);
        }
    }

    @Test
    void leversReadingsAndCausesStandInAnOrderOfTheLearnersOwn() {
        for (Mend mend : SYSTEMS) {
            Set<String> firstLevers = new TreeSet<>();
            Set<Integer> firstCauses = new TreeSet<>();
            for (long seed = 1; seed <= 40; seed++) {
                Mend own = (Mend) Variation.own(mend, seed);
                firstLevers.add(own.levers().get(0).change());
                firstCauses.add(own.causes().get(0).number());
                assertEquals(own, Variation.own(mend, seed));
            }
            assertTrue(firstLevers.size() >= 3 && firstCauses.size() >= 3, mend.path());
        }
    }

    /** A lever at its end says: move me. It may stand there only where nothing is allowed beyond. */
    @Test
    void noLeverThatCuresStandsAtATellTaleEnd() {
        List<String> atEnds = new ArrayList<>();
        for (Mend mend : SYSTEMS) {
            Design found = mend.faulty().design();
            for (Lever lever : mend.levers()) {
                if (lever.span().isEmpty() || !mend.mended().containsKey(lever.change())) {
                    continue;
                }
                double now = Double.parseDouble(Changes.current(found, lever.change()));
                double last = lever.span().get().from()
                        + (lever.span().get().stops() - 1) * lever.span().get().by();
                Allowed allowed = Changes.describe(lever.change()).range().orElseThrow();
                boolean low = Math.abs(now - lever.span().get().from()) < 1e-9 && now > allowed.low() + 1e-9;
                boolean high = Math.abs(now - last) < 1e-9 && now < allowed.high() - 1e-9;
                if (low || high) {
                    atEnds.add(mend.path() + " " + lever.change() + " at " + now);
                }
            }
        }
        assertEquals(List.of(), atEnds);
        assertTrue(
                SYSTEMS.stream()
                                .flatMap(mend -> mend.levers().stream()
                                        .filter(lever -> lever.span().isPresent()
                                                && mend.mended().containsKey(lever.change())))
                                .count()
                        >= 8,
                "levers with a slider that cure");
    }

    /** Before the marches of the year, which CuredSystemsTest has. */
    @Test
    void aMendedSystemHasNoDanger() {
        List<String> left = new ArrayList<>();
        for (Mend mend : SYSTEMS) {
            SafetyVerdict verdict = SafetyVerdict.quick(MendTrial.design(mend, mend.mended()));
            if (verdict.dangerous()) {
                left.add(mend.path() + " " + verdict.of(Severity.DANGER));
            }
        }
        assertEquals(List.of(), left);
    }

    @Test
    void whatTheyWereBuiltLikeHasNoDangerInAYearAndAfterAnyRest() {
        assertEquals(List.of(), SafetyVerdict.whole(FaultySystem.sound()).of(Severity.DANGER));
    }

    @Test
    void eachWrongCauseIsAnswered() {
        for (Mend mend : SYSTEMS) {
            assertTrue(mend.causes().stream().map(Choice.Option::say).distinct().count()
                    == mend.causes().size());
            assertTrue(mend.causes().stream().noneMatch(cause -> cause.say().isBlank()), mend.path());
        }
    }
}
