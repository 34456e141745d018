package loftcoil.runner.course;

import java.util.Collection;
import java.util.List;

/**
 * The quick path for someone who did the course years ago: a few short questions a lesson that find what has faded.
 *
 * @param seed chooses the numbers in its questions, so that they are not those the learner had in the lessons
 * @param parts the lessons that have questions here, in the order of the course
 */
public record Refresher(long seed, List<Part> parts) {

    /** Where a course has none. */
    public static final Refresher NONE = new Refresher(0, List.of());

    /** Longest time for all questions, in seconds: a quarter of an hour. */
    public static final int LONGEST_SECONDS = 900;

    /** Keeps a copy of the parts. */
    public Refresher {
        parts = List.copyOf(parts);
    }

    /**
     * The questions of one lesson.
     *
     * @param lesson name of the lesson
     * @param questions its questions, in the order they are asked
     */
    public record Part(String lesson, List<Quick> questions) {
        /** Keeps a copy of the questions. */
        public Part {
            questions = List.copyOf(questions);
        }
    }

    /**
     * One question.
     *
     * @param exercise path of the exercise, as in {@code 01-warm-water/push-of-a-metre}
     * @param seconds how long it takes someone who knows
     */
    public record Quick(String exercise, int seconds) {}

    /** All questions, in the order they are asked. */
    public List<Quick> questions() {
        return parts.stream().flatMap(part -> part.questions().stream()).toList();
    }

    /** The same with its lessons in this order; those that are not named are left out. */
    Refresher inOrder(List<String> lessons) {
        return new Refresher(
                seed,
                lessons.stream()
                        .flatMap(name ->
                                parts.stream().filter(part -> part.lesson().equals(name)))
                        .toList());
    }

    /** The same with the questions of these lessons alone. */
    Refresher only(Collection<String> lessons) {
        return new Refresher(
                seed,
                parts.stream().filter(part -> lessons.contains(part.lesson())).toList());
    }

    /** How long all of it takes, in seconds. */
    public int seconds() {
        return questions().stream().mapToInt(Quick::seconds).sum();
    }
}
