package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.LessonMinutes;
import loftcoil.runner.lesson.Step;
import org.junit.jupiter.api.Test;

/** Every lesson takes about as long as it says, none is too long for one sitting, and each begins with what was learned before. */
class LessonTimeTest {

    private static final int LONGEST_MINUTES = 35;
    private static final Course COURSE = CourseReader.builtIn();

    @Test
    void theHeadersMinutesAreThoseThatAreCounted() {
        Map<String, Integer> said = new LinkedHashMap<>();
        Map<String, Integer> counted = new LinkedHashMap<>();
        for (Lesson lesson : COURSE.lessons()) {
            said.put(lesson.id(), lesson.minutes());
            counted.put(lesson.id(), LessonMinutes.of(lesson));
        }
        assertEquals(counted, said);
        counted.forEach((id, minutes) -> assertTrue(minutes <= LONGEST_MINUTES, id + " takes " + minutes + " minutes"));
    }

    @Test
    void theCountIsOfWordsQuestionsAndRuns() {
        List<Step> steps = List.of(
                new Step.Prose(
                        "text_a", 1, "# A\n\n" + "word ".repeat(399) + "[a link](of-many-words-in-its-target.md)"),
                new Step.Snippet("run", 5, "1 + 1", java.util.Optional.empty()),
                new Step.Question("ask", 9, Step.Asked.QUESTION, "ask", "01-a/ask"));
        // 402 words, half a minute and a minute
        assertEquals(4, LessonMinutes.of(new Lesson("01-a", "A", 1, 1, List.of(), steps)));
    }

    @Test
    void eachLessonButTheFirstBeginsWithTwoQuestionsFromBefore() {
        for (Lesson lesson : COURSE.lessons().subList(1, COURSE.lessons().size())) {
            List<Step.Question> first = lesson.steps().stream()
                    .filter(Step.Question.class::isInstance)
                    .map(Step.Question.class::cast)
                    .limit(2)
                    .toList();
            assertTrue(
                    first.stream().allMatch(question -> question.asked() == Step.Asked.AGAIN),
                    lesson.id() + " begins with " + first);
        }
    }

    @Test
    void whatIsAskedAgainHasOtherNumbers() {
        int other = 0;
        for (Lesson lesson : COURSE.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Question question && question.asked() == Step.Asked.AGAIN) {
                    Exercise exercise = COURSE.exercise(question.exercise());
                    for (long seed = 1; seed <= 20 && !exercise.about().vary().isEmpty(); seed++) {
                        Exercise again = Variation.again(exercise, seed, lesson.id());
                        assertTrue(
                                !again.text()
                                        .equals(Variation.own(exercise, seed).text()),
                                exercise.path());
                        assertEquals(again, Variation.again(exercise, seed, lesson.id()));
                        other++;
                    }
                }
            }
        }
        assertTrue(other >= 400, "only " + other);
    }

    @Test
    void everyStepOfAnEarlierEditionIsFoundWhereItIsNow() {
        assertEquals(13, MovedLessons.earlier().size());
        for (String earlier : MovedLessons.earlier()) {
            assertTrue(COURSE.lesson(earlier).isPresent(), earlier);
        }
        MovedLessons.steps()
                .forEach((earlier, steps) -> steps.forEach(step -> assertTrue(
                        COURSE.lesson(MovedLessons.now(earlier, step)).orElseThrow().steps().stream()
                                .anyMatch(now -> now.id().equals(step)),
                        earlier + " " + step)));
    }
}
