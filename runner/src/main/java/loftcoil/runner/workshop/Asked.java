package loftcoil.runner.workshop;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.Progress;

/**
 * A place in a lesson where the learner is asked something.
 *
 * @param lesson the lesson
 * @param step the step
 * @param exercise what is asked there
 */
record Asked(Lesson lesson, Step.Question step, Exercise exercise) {

    private static final Pattern CHOSEN = Pattern.compile("choice (\\d{1,3})");

    static List<Asked> all(Course course) {
        return course.lessons().stream()
                .flatMap(lesson -> lesson.steps().stream()
                        .filter(Step.Question.class::isInstance)
                        .map(Step.Question.class::cast)
                        .map(step -> new Asked(lesson, step, course.exercise(step.exercise()))))
                .toList();
    }

    /** Whether an answer to it is judged. */
    boolean judged() {
        return step.asked() == Step.Asked.QUESTION || step.asked() == Step.Asked.AGAIN;
    }

    String kind() {
        return switch (step.asked()) {
            case PREDICT -> "guess";
            case QUESTION -> "question";
            case DECIDE -> "decision";
            case AGAIN -> "again";
        };
    }

    /** A wrong idea in words: of a choice, the text that was chosen. */
    String idea(String mistake) {
        Matcher chosen = CHOSEN.matcher(mistake);
        if (exercise instanceof Choice choice && chosen.matches()) {
            int index = Integer.parseInt(chosen.group(1)) - 1;
            if (index >= 0 && index < choice.options().size()) {
                return "“" + choice.options().get(index).text() + "”";
            }
        }
        return mistake;
    }

    Tried by(Progress progress) {
        return Tried.of(progress.work(lesson.id()).answersTo(step.id()));
    }
}
