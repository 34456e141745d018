package loftcoil.runner.lesson;

import java.util.List;

/**
 * A lesson as read from its file.
 *
 * @param id name of the lesson: its file name without the ending, such as {@code 01-warm-water}
 * @param title what it is called
 * @param step which step of the whole job it serves, 1 to 10
 * @param minutes how long a first reading takes
 * @param needs names of the lessons it builds on
 * @param steps what the learner meets, in order
 */
public record Lesson(String id, String title, int step, int minutes, List<String> needs, List<Step> steps) {

    /** Keeps its own copies. */
    public Lesson {
        needs = List.copyOf(needs);
        steps = List.copyOf(steps);
    }

    /** The steps that stand before that one, in order; all of them where there is no such step. */
    public List<Step> before(String stepId) {
        return steps.stream().takeWhile(step -> !step.id().equals(stepId)).toList();
    }
}
