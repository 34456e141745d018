package loftcoil.runner.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * All that a learner has done.
 *
 * @param version shape of this record, so that later editions can read older files
 * @param seed chooses the learner's own numbers in exercises that vary
 * @param lesson name of the lesson last open; empty at the start
 * @param lessons work by lesson name; work in steps that a lesson no longer has stays here
 * @param units whose units all is shown in, by their code; empty before they were chosen
 * @param refresher what came of each question of the refresher, by the exercise's path: right, wrong or forgotten; none
 *     before it was begun
 */
public record Progress(
        int version,
        long seed,
        String lesson,
        String units,
        Map<String, LessonWork> lessons,
        Map<String, AnswerState> refresher) {

    /** The shape written now. 2 has the refresher; 3 the units, the lessons in today's order and what was said to the last answers. */
    public static final int VERSION = 3;

    /** Keeps its own copies. */
    public Progress {
        lessons = Map.copyOf(lessons);
        refresher = Map.copyOf(refresher);
    }

    /** Nothing done yet. */
    public static Progress start(long seed) {
        return new Progress(VERSION, seed, "", "", Map.of(), Map.of());
    }

    /** Work in that lesson; none yet where it was never opened. */
    public LessonWork work(String lessonId) {
        return lessons.getOrDefault(lessonId, LessonWork.NONE);
    }

    /** The same with that lesson last open. */
    public Progress withLesson(String lessonId) {
        return new Progress(version, seed, lessonId, units, lessons, refresher);
    }

    /** The same with all shown in those units, by their code. */
    public Progress withUnits(String chosen) {
        return new Progress(version, seed, lesson, chosen, lessons, refresher);
    }

    /** The same with the work in one lesson replaced. */
    public Progress withWork(String lessonId, LessonWork work) {
        return new Progress(version, seed, lesson, units, put(lessons, lessonId, work), refresher);
    }

    /** The same with what came of one question of the refresher. */
    public Progress withRefreshed(String exercise, AnswerState state) {
        return new Progress(version, seed, lesson, units, lessons, put(refresher, exercise, state));
    }

    /** The same with the refresher not begun. */
    public Progress withoutRefresher() {
        return new Progress(version, seed, lesson, units, lessons, Map.of());
    }

    private static <V> Map<String, V> put(Map<String, V> map, String key, V value) {
        Map<String, V> changed = new TreeMap<>(map);
        changed.put(key, value);
        return changed;
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

        /** Nothing done yet. */
        public static final LessonWork NONE = new LessonWork("", Map.of(), List.of(), Map.of());

        /** Keeps its own copies. */
        public LessonWork {
            snippets = Map.copyOf(snippets);
            ran = List.copyOf(ran);
            answers = answers.entrySet().stream()
                    .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, given -> List.copyOf(given.getValue())));
        }

        /** Answers to that step, oldest first; none where it was never answered. */
        public List<Given> answersTo(String stepId) {
            return answers.getOrDefault(stepId, List.of());
        }

        /** The same with that step last worked on. */
        public LessonWork withStep(String stepId) {
            return new LessonWork(stepId, snippets, ran, answers);
        }

        /** The same with the learner's own text of a snippet. */
        public LessonWork withSnippet(String stepId, String source) {
            return new LessonWork(step, put(snippets, stepId, source), ran, answers);
        }

        /** The same without the learner's own text of a snippet: the lesson's own stands again. */
        public LessonWork withoutSnippet(String stepId) {
            Map<String, String> left = new TreeMap<>(snippets);
            left.remove(stepId);
            return new LessonWork(step, left, ran, answers);
        }

        /** The same with that snippet among those that ran to their end. */
        public LessonWork withRan(String stepId) {
            if (ran.contains(stepId)) {
                return this;
            }
            List<String> more = new ArrayList<>(ran);
            more.add(stepId);
            return new LessonWork(step, snippets, more, answers);
        }

        /** The same with one more answer to that step. */
        public LessonWork withAnswer(String stepId, Given given) {
            List<Given> more =
                    new ArrayList<>(answersTo(stepId).stream().map(Given::plain).toList());
            more.add(given);
            return new LessonWork(step, snippets, ran, put(answers, stepId, more));
        }
    }

    /**
     * One answer.
     *
     * @param text as typed
     * @param state what came of it
     * @param mistake which known mistake it looked like; empty where none
     * @param words what was said to it first; empty but for the last answer to a question
     * @param hint what was said then; empty where nothing, and but for the last answer
     */
    public record Given(String text, AnswerState state, String mistake, String words, String hint) {

        /** An answer of which no words are kept. */
        public Given(String text, AnswerState state, String mistake) {
            this(text, state, mistake, "", "");
        }

        /** The same without the words, which only the last answer needs. */
        Given plain() {
            return new Given(text, state, mistake);
        }
    }
}
