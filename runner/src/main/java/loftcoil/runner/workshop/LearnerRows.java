package loftcoil.runner.workshop;

import java.util.List;
import java.util.stream.IntStream;
import loftcoil.runner.course.Course;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.LessonProgress;
import loftcoil.runner.progress.Progress;

/** Where one learner is. */
final class LearnerRows {

    private LearnerRows() {}

    static ClassSummary.LearnerRow row(Course course, List<Asked> asked, ClassRoll.Learner learner) {
        Progress progress = learner.progress();
        List<LessonProgress> far = course.lessons().stream()
                .map(lesson -> LessonProgress.of(course, lesson, progress))
                .toList();
        List<Tried> tried = asked.stream().map(each -> each.by(progress)).toList();
        int wrong = tried.stream()
                .mapToInt(each -> each.tries() - (each.right() ? 1 : 0))
                .sum();
        return new ClassSummary.LearnerRow(
                learner.name(),
                last(course, progress),
                far.stream().map(LessonProgress::done).toList(),
                tried.stream().mapToInt(Tried::tries).sum(),
                wrong,
                faded(course, far));
    }

    /** A lesson or step that the course no longer has is told by the name it had. */
    private static String last(Course course, Progress progress) {
        String id = progress.lesson();
        if (id.isEmpty()) {
            return "";
        }
        String stepId = progress.work(id).step();
        String title = course.lesson(id).map(Lesson::title).orElse(id);
        return stepId.isEmpty()
                ? title
                : title + ", at “"
                        + course.lesson(id).map(lesson -> label(lesson, stepId)).orElse(stepId) + "”";
    }

    private static String label(Lesson lesson, String stepId) {
        return lesson.steps().stream()
                .filter(step -> step.id().equals(stepId))
                .filter(Step.Question.class::isInstance)
                .map(Step.Question.class::cast)
                .map(Step.Question::label)
                .findFirst()
                .orElse(stepId);
    }

    private static List<String> faded(Course course, List<LessonProgress> far) {
        return IntStream.range(0, far.size())
                .filter(i -> far.get(i).recall() == LessonProgress.Recall.FADED)
                .mapToObj(i -> course.lessons().get(i).title())
                .toList();
    }
}
