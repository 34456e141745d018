package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Numbers;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Variation;
import org.junit.jupiter.api.Test;

/** A wrong answer to a calculation is never left with “not yet” alone: every one of them says what to do first. */
class FirstHintTest {

    private static final List<Reckoned> ASKED = CourseReader.builtIn().exercises().values().stream()
            .filter(exercise -> !exercise.before())
            .filter(Reckoned.class::isInstance)
            .map(Reckoned.class::cast)
            .toList();

    @Test
    void everyCalculationSaysWhatToDoFirst() {
        assertEquals(
                List.of(),
                ASKED.stream()
                        .filter(exercise -> exercise.about().solution().first().isBlank())
                        .map(Exercise::path)
                        .toList());
        assertTrue(ASKED.size() >= 95, ASKED.size() + " calculations");
    }

    /** A hint names a step: it is a sentence of its own, not the question once more, and no two sums share it. */
    @Test
    void aFirstHintIsASentenceOfItsOwn() {
        for (Reckoned exercise : ASKED) {
            String first = exercise.about().solution().first();
            assertTrue(first.split(" ").length >= 5 && first.matches("(?s).*[.?!]"), exercise.path() + ": " + first);
            assertFalse(exercise.about().text().contains(first), exercise.path());
        }
        long own = ASKED.stream()
                .map(exercise -> exercise.about().solution().first())
                .distinct()
                .count();
        assertEquals(ASKED.size(), own);
    }

    @Test
    void noFirstHintGivesTheAnswerAway() {
        for (Reckoned exercise : ASKED) {
            Numbers numbers = Variation.numbers(exercise, 7);
            String first = exercise.with(numbers).about().solution().first();
            assertFalse(first.contains("{{"), exercise.path());
            exercise.published()
                    .map(published -> Double.toString(published.value()))
                    .ifPresent(value -> assertFalse(first.contains(value), exercise.path()));
        }
    }
}
