package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.runner.check.MendTrial;
import loftcoil.runner.exercise.Mend;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A faulty system that a learner has mended has no danger left: in no month, after no rest. */
@Tag("thorough")
class CuredSystemsTest {

    static Stream<Mend> systems() {
        return CourseReader.builtIn().exercises().values().stream()
                .filter(Mend.class::isInstance)
                .map(Mend.class::cast);
    }

    @ParameterizedTest
    @MethodSource("systems")
    void theWholeVerdictOfTheMendedSystemKnowsNoDanger(Mend mend) {
        SafetyVerdict verdict = SafetyVerdict.whole(MendTrial.design(mend, mend.mended()));
        assertEquals(List.of(), verdict.of(Severity.DANGER), mend.path());
        assertFalse(verdict.yearOpen() || verdict.startsOpen(), mend.path() + " is judged whole");
    }
}
