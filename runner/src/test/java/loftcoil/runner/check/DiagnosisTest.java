package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.exercise.Mend;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Two readings and a cause before anything is moved; the first two readings tell, the first cause is right. */
class DiagnosisTest {

    private static Mend mend;

    @BeforeAll
    static void readAsItStands() throws IOException {
        Path file = Path.of("../exercises/16-finding-faults/cold-by-morning.json");
        mend = (Mend) ExerciseReader.read("16-finding-faults/cold-by-morning", file.toString(), Files.readString(file));
        assertEquals(
                List.of(true, true, false, false),
                mend.readings().stream().map(Mend.Reading::tells).toList());
        assertTrue(mend.causes().get(0).right());
    }

    private static Optional<Verdict> verdict(String typed, boolean moved) {
        return Diagnosis.of(mend, typed).verdict(mend, moved);
    }

    @Test
    void twoReadingsComeFirst() {
        for (String typed : List.of("", "read = 1", "read = 1 2 3; cause = 1", "read = 1 99; cause = 1")) {
            assertFalse(Diagnosis.of(mend, typed).hasRead(), typed);
            assertTrue(
                    assertInstanceOf(
                                    Verdict.Unreadable.class,
                                    verdict(typed, false).orElseThrow())
                            .words()
                            .contains("two readings"),
                    typed);
        }
    }

    @Test
    void thenACauseIsNamed() {
        for (String typed : List.of("read = 1 2", "read = 1 2; cause = 99")) {
            assertTrue(
                    assertInstanceOf(
                                    Verdict.Unreadable.class,
                                    verdict(typed, false).orElseThrow())
                            .words()
                            .contains("Name the cause"),
                    typed);
        }
    }

    @Test
    void aWrongCauseIsAnsweredWithItsOwnWords() {
        Verdict.Wrong wrong = assertInstanceOf(
                Verdict.Wrong.class, verdict("read = 1 2; cause = 3", false).orElseThrow());
        assertEquals(mend.causes().get(2).say(), wrong.hint());
        assertEquals("cause 3", wrong.mistake());
    }

    @Test
    void theRightCauseByReadingsThatDoNotTellIsAGuess() {
        Verdict.Wrong wrong = assertInstanceOf(
                Verdict.Wrong.class, verdict("read = 2 3; cause = 1", false).orElseThrow());
        assertEquals("reads what does not tell", wrong.mistake());
        assertTrue(wrong.hint().contains(mend.readings().get(2).label()), wrong.hint());
        assertFalse(wrong.hint().contains(mend.readings().get(1).label()), wrong.hint());
    }

    @Test
    void theRightCauseByWhatTellsIsRightUntilSomethingIsMoved() {
        assertInstanceOf(
                Verdict.Right.class, verdict("read = 2 1; cause = 1", false).orElseThrow());
        assertEquals(Optional.empty(), verdict("read = 1 2; cause = 1; tank.laggingMm = 100", true));
        assertEquals(
                " tank.laggingMm = 100",
                Diagnosis.of(mend, "read = 1 2; cause = 1; tank.laggingMm = 100")
                        .changes());
    }
}
