package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.LessonProgress.Recall;

/** What a face shows of the refresher. */
public final class RefreshView {

    private RefreshView() {}

    /**
     * The whole path.
     *
     * @param minutes how long all of it takes someone who knows
     * @param questions in the order they are asked; none where the course has no refresher
     * @param lessons what was found, lesson by lesson
     * @param words where the learner is in it, in one sentence
     */
    public record Path(int minutes, List<Question> questions, List<Found> lessons, String words) {

        /** Whether every question has been answered. */
        public boolean done() {
            return questions.stream().noneMatch(question -> question.state().isEmpty());
        }
    }

    /**
     * One question.
     *
     * @param id the exercise's path
     * @param lesson title of its lesson
     * @param label a short name
     * @param markdown the question
     * @param unit the unit the reference is in; empty where there is none
     * @param options texts to choose among; empty where typed
     * @param state what came of the first answer; empty where not yet answered
     */
    public record Question(
            String id,
            String lesson,
            String label,
            String markdown,
            String unit,
            List<String> options,
            Optional<AnswerState> state) {}

    /**
     * What was found of one lesson.
     *
     * @param id its name
     * @param title what it is called
     * @param minutes how long it takes
     * @param recall what it comes to
     * @param words what was found, in words
     */
    public record Found(String id, String title, int minutes, Recall recall, String words) {}

    /**
     * What is said to an answer.
     *
     * @param state what came of it; where unread, it must be given again
     * @param words what to say first
     * @param hintMarkdown a hint; empty where none
     * @param workedMarkdown the worked solution; empty where the answer was right or could not be read
     * @param source where the reference value is from; empty where the answer could not be read
     */
    public record Said(AnswerState state, String words, String hintMarkdown, String workedMarkdown, String source) {}
}
