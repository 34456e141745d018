package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.course.Refresher;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import org.junit.jupiter.api.Test;

/** The refresher of the course as it is: short enough, and no lesson forgotten. */
class RefresherTest {

    private static final Course COURSE = CourseReader.builtIn();

    @Test
    void itTakesAQuarterOfAnHourAtMost() {
        int seconds = COURSE.refresher().seconds();
        assertTrue(seconds > 0 && seconds <= 15 * 60, seconds + " s");
    }

    @Test
    void everyLessonThatHasQuickQuestionsIsAskedAbout() {
        Set<String> asked =
                COURSE.refresher().parts().stream().map(Refresher.Part::lesson).collect(Collectors.toSet());
        List<String> forgotten = COURSE.lessons().stream()
                .filter(lesson -> quick(lesson) >= 2)
                .map(Lesson::id)
                .filter(id -> !asked.contains(id))
                .toList();
        assertEquals(List.of(), forgotten);
        assertTrue(asked.size() >= 17, asked.toString());
    }

    private static long quick(Lesson lesson) {
        return lesson.steps().stream()
                .filter(Step.Question.class::isInstance)
                .map(Step.Question.class::cast)
                .filter(question -> question.asked() == Step.Asked.QUESTION)
                .map(question -> COURSE.exercise(question.exercise()))
                .filter(RefresherTest::isQuick)
                .count();
    }

    private static boolean isQuick(Exercise exercise) {
        return exercise instanceof Choice || exercise instanceof Quantity;
    }

    /** Who is asked years later has no plot before them and no snippet above. */
    @Test
    void noQuestionNeedsWhatStandsAroundItInItsLesson() {
        List<String> leaning = COURSE.refresher().questions().stream()
                .map(quick -> COURSE.exercise(quick.exercise()))
                // Where the plot only saves the sum, the sum can still be done.
                .filter(exercise -> !exercise.text().contains("or work it out"))
                .filter(exercise ->
                        exercise.text().matches("(?is).*\\b(plot|curve above|snippet|slider|table above)\\b.*"))
                .map(Exercise::path)
                .toList();
        assertEquals(List.of(), leaning);
    }
}
