package loftcoil.runner.show;

import java.util.List;

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
     * @param state {@code right}, {@code wrong}, {@code forgotten}, or empty where not yet answered
     */
    public record Question(
            String id, String lesson, String label, String markdown, String unit, List<String> options, String state) {}

    /**
     * What was found of one lesson.
     *
     * @param id its name
     * @param title what it is called
     * @param minutes how long it takes
     * @param state {@code faded}, {@code held}, or {@code open} where questions are left
     * @param words what was found, in words
     */
    public record Found(String id, String title, int minutes, String state, String words) {}

    /**
     * What is said to an answer.
     *
     * @param state {@code right}, {@code wrong}, {@code forgotten}, or {@code unread} where it must be given again
     * @param words what to say first
     * @param hintMarkdown a hint; empty where none
     * @param workedMarkdown the worked solution; empty where the answer was right or could not be read
     * @param source where the reference value is from; empty where the answer could not be read
     */
    public record Said(String state, String words, String hintMarkdown, String workedMarkdown, String source) {}
}
