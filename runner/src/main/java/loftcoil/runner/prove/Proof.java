package loftcoil.runner.prove;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.course.Course;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SessionSetup;

/** Proves a course: runs all of it with the example design and compares every number that can be compared. */
public final class Proof {

    private final Course course;
    private final Supplier<Session> sessions;
    private final List<Long> seeds;

    /**
     * A proof of a course.
     *
     * @param course what to prove
     * @param setup how its Java runs
     * @param seeds learners' seeds for exercises that vary, at least one
     * @throws IllegalArgumentException where there is no seed
     */
    public Proof(Course course, SessionSetup setup, List<Long> seeds) {
        this(course, () -> Session.openWithoutSpare(setup), seeds);
    }

    /**
     * A proof of a course in sessions from elsewhere.
     *
     * @param course what to prove
     * @param sessions asked for each session that is needed; closed after the proof
     * @param seeds learners' seeds for exercises that vary, at least one
     * @throws IllegalArgumentException where there is no seed
     */
    public Proof(Course course, Supplier<Session> sessions, List<Long> seeds) {
        if (seeds.isEmpty()) {
            throw new IllegalArgumentException("seeds: none given; allowed: at least one");
        }
        this.course = course;
        this.sessions = sessions;
        this.seeds = List.copyOf(seeds);
    }

    /**
     * Runs every lesson.
     *
     * @param each told of each lesson as soon as it is done
     * @return the results in the order of the lessons
     */
    public List<LessonProof> run(Consumer<LessonProof> each) {
        return run(begun -> {}, each);
    }

    /**
     * Runs every lesson.
     *
     * @param begun told of each lesson before it runs, once it is known that this Java can run it
     * @param each told of each lesson as soon as it is done
     * @return the results in the order of the lessons
     */
    public List<LessonProof> run(Consumer<Lesson> begun, Consumer<LessonProof> each) {
        try (Session session = sessions.get();
                Session reckoning = sessions.get()) {
            return course.lessons().stream()
                    .peek(begun)
                    .map(lesson -> lesson(lesson, session, reckoning))
                    .peek(each)
                    .toList();
        }
    }

    private LessonProof lesson(Lesson lesson, Session session, Session reckoning) {
        long start = System.nanoTime();
        session.forget();
        reckoning.forget();
        String example = DesignJson.write(Example.orchardBothy());
        DesignBinding.bind(session, example);
        DesignBinding.bind(reckoning, example);
        SnippetProof snippets = new SnippetProof(session);
        ExerciseProof exercises = new ExerciseProof(reckoning, seeds);
        lesson.steps().forEach(step -> {
            snippets.take(step);
            exercises.take(course, step);
        });
        return new LessonProof(
                lesson.id(),
                snippets.ran(),
                snippets.charts(),
                exercises.checked(),
                exercises.compared(),
                exercises.values(),
                Stream.concat(snippets.faults().stream(), exercises.faults().stream())
                        .toList(),
                (System.nanoTime() - start) / 1_000_000);
    }
}
