package loftcoil.runner.course;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.lesson.Lesson;

/**
 * All there is to learn.
 *
 * @param lessons in order of their numbers, at least one
 * @param exercises by path; each is used by exactly one lesson
 * @param terms the glossary in its own order; empty where there is none
 * @param refresher the quick path that finds what has faded; without questions where the course has none
 */
public record Course(List<Lesson> lessons, Map<String, Exercise> exercises, List<Term> terms, Refresher refresher) {

    /** Keeps its own copies. */
    public Course {
        lessons = List.copyOf(lessons);
        exercises = Map.copyOf(exercises);
        terms = List.copyOf(terms);
    }

    /** The lesson of that name, or the one that an earlier edition called so. */
    public Optional<Lesson> lesson(String id) {
        String now = MovedLessons.now(id);
        return lessons.stream()
                .filter(lesson -> lesson.id().equals(id) || lesson.id().equals(now))
                .findFirst();
    }

    /**
     * The same course with these lessons alone, in the order of the course.
     *
     * @param ids names of lessons of this course; any other is passed over
     */
    public Course only(Collection<String> ids) {
        return new Course(
                lessons.stream().filter(lesson -> ids.contains(lesson.id())).toList(),
                exercises,
                terms,
                refresher.only(ids));
    }

    /**
     * The exercise of that path.
     *
     * @throws IllegalArgumentException where there is none; a question step of this course always has one
     */
    public Exercise exercise(String path) {
        Exercise exercise = exercises.get(path);
        if (exercise == null) {
            throw new IllegalArgumentException("no exercise " + path);
        }
        return exercise;
    }
}
