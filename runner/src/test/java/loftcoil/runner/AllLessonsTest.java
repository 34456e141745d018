package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.prove.LessonProof;
import loftcoil.runner.prove.Proof;
import loftcoil.runner.session.SessionSetup;
import org.junit.jupiter.api.Test;

/** The course itself: every snippet runs, every number holds, every lesson has what a lesson must have. */
class AllLessonsTest {

    private final Course course = CourseReader.builtIn();

    @Test
    void everySnippetRunsAndEveryNumberHolds() {
        List<LessonProof> proofs = new Proof(course, SessionSetup.usual(), List.of(1L, 2L)).run(proof -> {});

        assertTrue(proofs.size() >= 3);
        for (LessonProof proof : proofs) {
            assertEquals(List.of(), proof.faults(), proof.lessonId());
            assertTrue(proof.charts() >= 2, proof.lessonId() + " draws fewer than two plots");
        }
    }

    @Test
    void everyLessonPredictsFirstAsksFourTimesWarnsAndEndsInADecision() {
        for (Lesson lesson : course.lessons()) {
            List<Step.Question> questions = lesson.steps().stream()
                    .filter(Step.Question.class::isInstance)
                    .map(Step.Question.class::cast)
                    .toList();

            assertEquals(Step.Asked.PREDICT, questions.get(0).asked(), lesson.id());
            assertTrue(count(questions, Step.Asked.QUESTION) >= 4, lesson.id());
            assertTrue(lesson.steps().stream().anyMatch(Step.Caution.class::isInstance), lesson.id());
            Step.Question last = questions.get(questions.size() - 1);
            assertEquals(Step.Asked.DECIDE, last.asked(), lesson.id());
            assertTrue(course.exercise(last.exercise()) instanceof Decision, lesson.id());
        }
    }

    private static long count(List<Step.Question> questions, Step.Asked asked) {
        return questions.stream().filter(question -> question.asked() == asked).count();
    }
}
