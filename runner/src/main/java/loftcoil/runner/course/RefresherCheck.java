package loftcoil.runner.course;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;

/** Checks a refresher against its course, and puts its lessons in the order of the course. */
final class RefresherCheck {

    private static final int FEWEST = 2;
    private static final int MOST = 3;

    private final CourseFiles shelf;
    private final List<Lesson> lessons;
    private final Map<String, Exercise> exercises;
    private final Set<String> asked = new HashSet<>();

    RefresherCheck(CourseFiles shelf, List<Lesson> lessons, Map<String, Exercise> exercises) {
        this.shelf = shelf;
        this.lessons = lessons;
        this.exercises = exercises;
    }

    /** The refresher in the order of the course; faults go to the shelf. */
    Refresher checked(Refresher read) {
        if (lessons.isEmpty()) {
            // That nothing can be asked then goes without saying.
            return Refresher.NONE;
        }
        for (Lesson lesson : lessons) {
            part(read, lesson.id()).ifPresent(part -> check(part, lesson));
        }
        Set<String> names = lessons.stream().map(Lesson::id).collect(Collectors.toSet());
        read.parts().stream()
                .filter(part -> !names.contains(part.lesson()))
                .forEach(part -> fault("lessons." + part.lesson(), "no lesson of that name", "a lesson of the course"));
        if (read.seconds() > Refresher.LONGEST_SECONDS) {
            fault("lessons", read.seconds() + " seconds in all", "at most " + Refresher.LONGEST_SECONDS);
        }
        return read.inOrder(lessons.stream().map(Lesson::id).toList());
    }

    private static Optional<Refresher.Part> part(Refresher read, String lesson) {
        return read.parts().stream()
                .filter(part -> part.lesson().equals(lesson))
                .findFirst();
    }

    private void check(Refresher.Part part, Lesson lesson) {
        String field = "lessons." + lesson.id();
        int count = part.questions().size();
        if (count < FEWEST || count > MOST) {
            fault(field, count + " questions", FEWEST + " or " + MOST);
        }
        Set<String> questions = lesson.steps().stream()
                .filter(Step.Question.class::isInstance)
                .map(Step.Question.class::cast)
                .filter(question -> question.asked() == Step.Asked.QUESTION || question.asked() == Step.Asked.PREDICT)
                .map(Step.Question::exercise)
                .collect(Collectors.toSet());
        for (int i = 0; i < count; i++) {
            String path = part.questions().get(i).exercise();
            String place = field + "[" + i + "].exercise";
            if (!asked.add(path)) {
                fault(place, path + " is asked twice", "each exercise once");
            }
            if (!questions.contains(path)) {
                fault(place, path + " is no question of this lesson", "one of " + quick(questions));
            } else if (!isQuick(path)) {
                fault(place, path + " takes too long to answer", "a choice or a quantity: " + quick(questions));
            }
        }
    }

    private List<String> quick(Set<String> questions) {
        return questions.stream().filter(this::isQuick).sorted().toList();
    }

    private boolean isQuick(String path) {
        Exercise exercise = exercises.get(path);
        return exercise instanceof Choice || exercise instanceof Quantity;
    }

    private void fault(String field, String what, String allowed) {
        shelf.fault(RefresherReader.FILE, " " + field, what, allowed);
    }
}
