package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.check.Checker;
import loftcoil.runner.check.Verdict;
import loftcoil.runner.check.Worked;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.Refresher;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.LessonProgress.Recall;
import loftcoil.runner.progress.LessonProgress.Recalled;
import loftcoil.runner.progress.Progress;

/** The refresher of a course over a learner's folder. */
final class RefreshDesk implements Refresh {

    private static final int SECONDS_PER_MINUTE = 60;

    private final Course course;
    private final LearnerStore store;
    private final Reckoning reckoning;
    private final ReplyWords replies;

    RefreshDesk(Course course, LearnerStore store, Reckoning reckoning) {
        this.course = course;
        this.store = store;
        this.reckoning = reckoning;
        this.replies = new ReplyWords(reckoning, store::units);
    }

    @Override
    public RefreshView.Path path() {
        Refresher refresher = course.refresher();
        List<RefreshView.Question> questions = refresher.parts().stream()
                .flatMap(part -> part.questions().stream().map(quick -> question(part.lesson(), quick.exercise())))
                .toList();
        List<RefreshView.Found> found =
                refresher.parts().stream().map(this::found).toList();
        int minutes = (refresher.seconds() + SECONDS_PER_MINUTE - 1) / SECONDS_PER_MINUTE;
        return new RefreshView.Path(minutes, questions, found, words(questions, found));
    }

    private static String words(List<RefreshView.Question> questions, List<RefreshView.Found> found) {
        long left = questions.stream()
                .filter(question -> question.state().isEmpty())
                .count();
        if (questions.isEmpty()) {
            return "This course has no refresher.";
        }
        if (left > 0) {
            return (questions.size() - left) + " of " + questions.size() + " questions answered.";
        }
        long faded =
                found.stream().filter(each -> each.recall() == Recall.FADED).count();
        return faded == 0
                ? "Nothing has faded: every question was right."
                : faded == 1 ? "One lesson has faded." : faded + " lessons have faded.";
    }

    private RefreshView.Question question(String lessonId, String path) {
        Lesson lesson = lesson(lessonId);
        Exercise exercise = own(path);
        return new RefreshView.Question(
                path,
                lesson.title(),
                label(lesson, path),
                exercise.text(),
                exercise instanceof Quantity quantity ? quantity.reference().unit() : "",
                exercise instanceof Choice choice
                        ? choice.options().stream().map(Choice.Option::text).toList()
                        : List.of(),
                Optional.ofNullable(store.progress().refresher().get(path)));
    }

    /** A lesson the refresher names; the reader of courses has refused any that is not there. */
    private Lesson lesson(String lessonId) {
        return course.lesson(lessonId)
                .orElseThrow(
                        () -> new IllegalStateException("the refresher names no lesson of this course: " + lessonId));
    }

    private static String label(Lesson lesson, String path) {
        return lesson.steps().stream()
                .filter(Step.Question.class::isInstance)
                .map(Step.Question.class::cast)
                .filter(step -> step.exercise().equals(path))
                .map(Step.Question::label)
                .findFirst()
                .orElse("");
    }

    private Exercise own(String path) {
        return Variation.own(course.exercise(path), course.refresher().seed());
    }

    private RefreshView.Found found(Refresher.Part part) {
        Lesson lesson = lesson(part.lesson());
        Recalled came = Recalled.of(part, store.progress());
        String words =
                switch (came.recall()) {
                    case FADED -> came.missed() + " of " + came.asked() + " missed";
                    case HELD -> "all " + came.asked() + " right";
                    case OPEN -> came.answered() + " of " + came.asked() + " asked";
                };
        return new RefreshView.Found(lesson.id(), lesson.title(), lesson.minutes(), came.recall(), words);
    }

    @Override
    public RefreshView.Said answer(String id, String text) {
        Exercise exercise = asked(id);
        try {
            // A lesson's prediction is asked here of someone who knows: it is judged too.
            Verdict verdict = Checker.compare(exercise, text, reckoning);
            AnswerState state = ReplyWords.state(verdict);
            if (verdict instanceof Verdict.Right right) {
                keep(id, state);
                String source = exercise.about().source();
                return new RefreshView.Said(state, replies.words(exercise, verdict), right.say(), "", source);
            }
            return verdict instanceof Verdict.Wrong wrong
                    ? missed(exercise, state, replies.words(exercise, verdict), wrong.hint())
                    : new RefreshView.Said(AnswerState.UNREAD, replies.words(exercise, verdict), "", "", "");
        } catch (ReckoningException unable) {
            // The answer may well be right: it is told as our own trouble and never counted.
            String words = "Loftcoil cannot work out this question's own value, so your answer is not judged: "
                    + unable.getMessage();
            return new RefreshView.Said(AnswerState.UNREAD, words, "", "", "");
        }
    }

    @Override
    public RefreshView.Said forgotten(String id) {
        return missed(asked(id), AnswerState.FORGOTTEN, "Then read how it goes.", "");
    }

    private RefreshView.Said missed(Exercise exercise, AnswerState state, String words, String hint) {
        keep(exercise.path(), state);
        String worked;
        try {
            worked = Worked.markdown(exercise, reckoning);
        } catch (ReckoningException unable) {
            worked = exercise.about().solution().text();
        }
        return new RefreshView.Said(state, words, hint, worked, exercise.about().source());
    }

    private Exercise asked(String id) {
        if (course.refresher().questions().stream()
                .noneMatch(quick -> quick.exercise().equals(id))) {
            throw new UnknownNameException("The refresher has no question '" + id + "'.");
        }
        return own(id);
    }

    /** The first answer stands: what was missed once has faded, whatever is tried after the solution was read. */
    private void keep(String id, AnswerState state) {
        store.update(progress -> progress.refresher().containsKey(id) ? progress : progress.withRefreshed(id, state));
    }

    @Override
    public RefreshView.Path again() {
        store.update(Progress::withoutRefresher);
        return path();
    }
}
