package loftcoil.runner.progress;

import java.util.List;
import java.util.Map;

/**
 * All that a learner has done.
 *
 * @param version shape of this record, so that later editions can read older files
 * @param seed chooses the learner's own numbers in exercises that vary
 * @param lesson name of the lesson last open; empty at the start
 * @param lessons work by lesson name
 */
public record Progress(int version, long seed, String lesson, Map<String, LessonWork> lessons) {

    /** Keeps its own copies. */
    public Progress {
        lessons = Map.copyOf(lessons);
    }

    /**
     * Work in one lesson.
     *
     * @param step name of the step last worked on; empty at the start
     * @param snippets the learner's own text of edited snippets, by step name
     * @param ran names of snippets that ran to their end
     * @param answers answers by step name, oldest first
     */
    public record LessonWork(
            String step, Map<String, String> snippets, List<String> ran, Map<String, List<Given>> answers) {

        /** Keeps its own copies. */
        public LessonWork {
            snippets = Map.copyOf(snippets);
            ran = List.copyOf(ran);
            answers = Map.copyOf(answers);
        }
    }

    /**
     * One answer.
     *
     * @param text as typed
     * @param state what came of it: {@code right}, {@code wrong}, {@code noted}, {@code decided} or {@code unread}
     * @param mistake which known mistake it looked like; empty where none
     */
    public record Given(String text, String state, String mistake) {}
}
