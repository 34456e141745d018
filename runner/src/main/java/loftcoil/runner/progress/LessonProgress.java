package loftcoil.runner.progress;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.Refresher;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;

/**
 * How far a learner is in one lesson. A guess before a run is no question that counts.
 *
 * @param done questions and decisions that are right or decided
 * @param counted questions and decisions there are
 * @param recall what the refresher found of it
 */
public record LessonProgress(int done, int counted, Recall recall) {

    /** What the refresher found of a lesson; the code is what pages hold. */
    public enum Recall {
        /** Not all of its questions were answered, or it has none. */
        @JsonProperty("open")
        OPEN,
        /** All of them were right at once. */
        @JsonProperty("held")
        HELD,
        /** One at least was missed: the lesson should be read again. */
        @JsonProperty("faded")
        FADED
    }

    /** The questions and decisions of a lesson that count. */
    public static List<Step.Question> counted(Lesson lesson) {
        return lesson.steps().stream()
                .filter(Step.Question.class::isInstance)
                .map(Step.Question.class::cast)
                .filter(Step.Question::counted)
                .toList();
    }

    /** Of one lesson of a course. */
    public static LessonProgress of(Course course, Lesson lesson, Progress progress) {
        Progress.LessonWork work = progress.work(lesson.id());
        List<Step.Question> counted = counted(lesson);
        long done = counted.stream()
                .filter(question -> work.answersTo(question.id()).stream()
                        .anyMatch(given -> given.state().isDone()))
                .count();
        Recall recall = course.refresher().parts().stream()
                .filter(part -> part.lesson().equals(lesson.id()))
                .map(part -> Recalled.of(part, progress).recall())
                .findFirst()
                .orElse(Recall.OPEN);
        return new LessonProgress((int) done, counted.size(), recall);
    }

    /**
     * What came of the refresher's questions on one lesson.
     *
     * @param asked questions there are
     * @param answered questions with an answer
     * @param missed questions whose first answer was not right
     */
    public record Recalled(int asked, int answered, int missed) {

        /** Of one part of a refresher. */
        public static Recalled of(Refresher.Part part, Progress progress) {
            Map<String, AnswerState> given = progress.refresher();
            List<AnswerState> states = part.questions().stream()
                    .map(Refresher.Quick::exercise)
                    .filter(given::containsKey)
                    .map(given::get)
                    .toList();
            long missed =
                    states.stream().filter(state -> state != AnswerState.RIGHT).count();
            return new Recalled(part.questions().size(), states.size(), (int) missed);
        }

        /** What it comes to. */
        public Recall recall() {
            return missed > 0 ? Recall.FADED : answered == asked ? Recall.HELD : Recall.OPEN;
        }
    }
}
