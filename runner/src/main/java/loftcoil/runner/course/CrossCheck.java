package loftcoil.runner.course;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import loftcoil.engine.fault.Fault;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.ParsedLesson;
import loftcoil.runner.lesson.Step;

/** Checks lessons and exercises against each other: what no single file can settle. */
final class CrossCheck {

    private final CourseFiles lessonShelf;
    private final CourseFiles exerciseShelf;
    private final List<Fault> faults;

    CrossCheck(CourseFiles lessonShelf, CourseFiles exerciseShelf, List<Fault> faults) {
        this.lessonShelf = lessonShelf;
        this.exerciseShelf = exerciseShelf;
        this.faults = faults;
    }

    void check(List<ParsedLesson> parsed, Map<String, Exercise> exercises) {
        if (parsed.isEmpty()) {
            faults.add(new Fault("lessons", "no lesson", "at least one, such as 01-warm-water.md", ""));
            // That no exercise is used then goes without saying.
            return;
        }
        order(parsed.stream().map(ParsedLesson::lesson).toList());
        parsed.forEach(this::links);
        Map<String, String> users = new HashMap<>();
        for (ParsedLesson each : parsed) {
            for (Step step : each.lesson().steps()) {
                if (step instanceof Step.Question question) {
                    question(each.lesson(), question, exercises, users);
                }
            }
        }
        Set<String> unused = new TreeSet<>(exercises.keySet());
        unused.removeAll(users.keySet());
        unused.forEach(path -> exerciseShelf.fault(
                path + ".json", "", "used by no lesson", "an exercise that exactly one lesson links to"));
    }

    /** Each word of the glossary stands there once, and the lesson it names is there. */
    void terms(String file, List<Term> terms) {
        Set<String> seen = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (Term term : terms) {
            if (!seen.add(term.name())) {
                lessonShelf.fault(file, "", "“" + term.name() + "” a second time", "each word once");
            }
            if (!term.lessonId().isEmpty() && !lessonShelf.has(term.lessonId() + ".md")) {
                lessonShelf.fault(
                        file,
                        "",
                        "“" + term.name() + "” names lesson " + term.lessonId() + ", which is not there",
                        "a lesson of this folder");
            }
        }
    }

    private void order(List<Lesson> lessons) {
        Set<String> earlier = new TreeSet<>();
        Map<String, String> numbers = new HashMap<>();
        for (Lesson lesson : lessons) {
            String other = numbers.putIfAbsent(lesson.id().substring(0, 2), lesson.id());
            if (other != null) {
                lessonShelf.fault(lesson.id() + ".md", "", "the same number as " + other, "a number of its own");
            }
            for (String need : lesson.needs()) {
                if (!earlier.contains(need)) {
                    lessonShelf.fault(
                            lesson.id() + ".md",
                            "1",
                            "needs " + need + ", which is no earlier lesson",
                            earlier.isEmpty() ? "nothing, as this is the first" : String.join(", ", earlier));
                }
            }
            earlier.add(lesson.id());
        }
    }

    private void links(ParsedLesson parsed) {
        for (ParsedLesson.Link link : parsed.links()) {
            String file = link.target().replaceFirst("#.*", "");
            boolean within = file.isEmpty() && link.target().startsWith("#");
            if (!within && !lessonShelf.has(file)) {
                lessonShelf.fault(
                        parsed.lesson().id() + ".md",
                        link.line() + ":" + link.column(),
                        "link to “" + link.target() + "”, where there is nothing",
                        "a file of the lessons folder");
            }
        }
    }

    private void question(
            Lesson lesson, Step.Question question, Map<String, Exercise> exercises, Map<String, String> users) {
        String place = question.line() + ":1";
        if (question.asked() == Step.Asked.AGAIN) {
            again(lesson, question, exercises, users);
            return;
        }
        String other = users.putIfAbsent(question.exercise(), lesson.id() + ".md:" + question.line());
        if (other != null) {
            lessonShelf.fault(
                    lesson.id() + ".md",
                    place,
                    "exercise " + question.exercise() + " is used already, by " + other,
                    "each exercise once");
        }
        Exercise exercise = exercises.get(question.exercise());
        if (exercise != null) {
            fits(lesson, question, exercise);
        } else if (!exerciseShelf.has(question.exercise() + ".json")) {
            // One that is there but faulty has its own faults already.
            lessonShelf.fault(
                    lesson.id() + ".md",
                    place,
                    "exercise " + question.exercise() + " does not exist",
                    "a file of the exercises folder");
        }
    }

    /** Only what an earlier lesson has asked, and what can be answered without what stands around it there. */
    private void again(
            Lesson lesson, Step.Question question, Map<String, Exercise> exercises, Map<String, String> users) {
        String user = users.getOrDefault(question.exercise(), lesson.id());
        Exercise exercise = exercises.get(question.exercise());
        boolean quick = exercise instanceof Choice || exercise instanceof Quantity;
        if (user.startsWith(lesson.id()) || !quick || (exercise != null && exercise.before())) {
            lessonShelf.fault(
                    lesson.id() + ".md",
                    question.line() + ":1",
                    "Again: for " + question.exercise(),
                    "a choice or a quantity that a lesson before this one asks with Question:");
        }
    }

    private void fits(Lesson lesson, Step.Question question, Exercise exercise) {
        Step.Asked asked = exercise.before()
                ? Step.Asked.PREDICT
                : exercise instanceof Decision ? Step.Asked.DECIDE : Step.Asked.QUESTION;
        if (question.asked() != asked) {
            lessonShelf.fault(
                    lesson.id() + ".md",
                    question.line() + ":1",
                    word(question.asked()) + " for " + exercise.path(),
                    word(asked) + ", as the exercise is a " + exercise.form()
                            + (exercise.before() ? " with when: before" : ""));
        }
    }

    private static String word(Step.Asked asked) {
        return switch (asked) {
            case PREDICT -> "Predict:";
            case QUESTION -> "Question:";
            case DECIDE -> "Decide:";
            case AGAIN -> "Again:";
        };
    }
}
