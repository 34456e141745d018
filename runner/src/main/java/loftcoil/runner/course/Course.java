package loftcoil.runner.course;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.lesson.Lesson;

/** All there is to learn. Parts may be read when they are first asked for; from then on nothing of it changes. */
public final class Course {

    /** By name, in order of their numbers. */
    private final Map<String, Later<Lesson>> lessons;

    private final SortedMap<String, Later<Exercise>> exercises;
    private final Later<List<Term>> terms;
    private final Later<Refresher> refresher;

    /** Of parts that are read when they are first asked for. */
    Course(
            Map<String, Later<Lesson>> lessons,
            Map<String, Later<Exercise>> exercises,
            Later<List<Term>> terms,
            Later<Refresher> refresher) {
        this.lessons = Collections.unmodifiableMap(new LinkedHashMap<>(lessons));
        this.exercises = Collections.unmodifiableSortedMap(new TreeMap<>(exercises));
        this.terms = terms;
        this.refresher = refresher;
    }

    /** Of parts that have been read. */
    static Course of(List<Lesson> lessons, Map<String, Exercise> exercises, List<Term> terms, Refresher refresher) {
        Map<String, Later<Lesson>> byName = new LinkedHashMap<>();
        lessons.forEach(lesson -> byName.put(lesson.id(), new Later<>(() -> lesson)));
        Map<String, Later<Exercise>> byPath = new TreeMap<>();
        exercises.forEach((path, exercise) -> byPath.put(path, new Later<>(() -> exercise)));
        List<Term> glossary = List.copyOf(terms);
        return new Course(byName, byPath, new Later<>(() -> glossary), new Later<>(() -> refresher));
    }

    /** Names of the lessons, in order of their numbers; at least one. */
    public List<String> names() {
        return List.copyOf(lessons.keySet());
    }

    /** The lessons, in order of their numbers. */
    public List<Lesson> lessons() {
        return lessons.values().stream().map(Later::get).toList();
    }

    /** The exercises by path; each is asked with {@code Question:}, {@code Predict:} or {@code Decide:} by exactly one lesson. */
    public Map<String, Exercise> exercises() {
        SortedMap<String, Exercise> all = new TreeMap<>();
        exercises.forEach((path, exercise) -> all.put(path, exercise.get()));
        return Collections.unmodifiableSortedMap(all);
    }

    /** The glossary in its own order; empty where there is none. */
    public List<Term> terms() {
        return terms.get();
    }

    /** The quick path that finds what has faded; without questions where the course has none. */
    public Refresher refresher() {
        return refresher.get();
    }

    /** The lesson of that name, or the one that an earlier edition called so. */
    public Optional<Lesson> lesson(String id) {
        Later<Lesson> lesson = lessons.getOrDefault(id, lessons.get(MovedLessons.now(id)));
        return Optional.ofNullable(lesson).map(Later::get);
    }

    /**
     * The same course with these lessons alone, in the order of the course.
     *
     * @param ids names of lessons of this course; any other is passed over
     */
    public Course only(Collection<String> ids) {
        Map<String, Later<Lesson>> chosen = new LinkedHashMap<>(lessons);
        chosen.keySet().retainAll(ids);
        List<String> names = List.copyOf(chosen.keySet());
        return new Course(
                chosen, exercises, terms, new Later<>(() -> refresher.get().only(names)));
    }

    /**
     * The exercise of that path.
     *
     * @throws IllegalArgumentException where there is none; a question step of this course always has one
     */
    public Exercise exercise(String path) {
        Later<Exercise> exercise = exercises.get(path);
        if (exercise == null) {
            throw new IllegalArgumentException("no exercise " + path);
        }
        return exercise.get();
    }
}
