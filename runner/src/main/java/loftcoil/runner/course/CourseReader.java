package loftcoil.runner.course;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.LessonParser;
import loftcoil.runner.lesson.ParsedLesson;

/** Reads all lessons and exercises, from this program's own content or from a writer's folders. */
public final class CourseReader {

    private static final String LESSONS = "loftcoil/lessons";
    private static final String EXERCISES = "loftcoil/exercises";
    private static final Pattern LESSON_FILE = Pattern.compile("(\\d\\d-[a-z0-9]+(?:-[a-z0-9]+)*)\\.md");
    private static final Pattern EXERCISE_FILE =
            Pattern.compile("(\\d\\d-[a-z0-9]+(?:-[a-z0-9]+)*/[a-z0-9]+(?:-[a-z0-9]+)*)\\.json");
    private static final String GLOSSARY = "words.md";
    /** Files a writer may keep beside the lessons: they are read, not stepped through. */
    private static final List<String> BESIDE = List.of(GLOSSARY, "README.md");

    private CourseReader() {}

    /**
     * The course this program brings.
     *
     * @throws RefusedException where anything is wrong in it
     */
    public static Course builtIn() {
        try {
            return fromCode(codeSource());
        } catch (IOException | URISyntaxException e) {
            throw refusal("the program's own content cannot be read (" + e.getMessage() + ")");
        }
    }

    private static Path codeSource() throws URISyntaxException {
        CodeSource code = CourseReader.class.getProtectionDomain().getCodeSource();
        if (code == null || code.getLocation() == null) {
            throw refusal("the program does not know where it was started from");
        }
        return Path.of(code.getLocation().toURI());
    }

    /** From a folder of classes or from a jar. */
    static Course fromCode(Path code) throws IOException {
        return read(Shelves.inCode(code));
    }

    /**
     * The course this program brings, each part of it read when it is first asked for: whoever opens a lesson waits for that alone.
     * Nothing is checked against anything else, as {@link #builtIn} does; a part that is faulty is refused when it is asked for.
     */
    public static Course builtInAsAsked() {
        try {
            return asAsked(codeSource());
        } catch (IOException | URISyntaxException e) {
            throw refusal("the program's own content cannot be read (" + e.getMessage() + ")");
        }
    }

    /** From a folder of classes or from a jar, each part when it is first asked for. */
    static Course asAsked(Path code) throws IOException {
        Shelves shelves = Shelves.inCode(code);
        Map<String, Later<Lesson>> lessons = new TreeMap<>();
        for (String path : shelves.lessons.paths()) {
            var name = LESSON_FILE.matcher(path);
            if (name.matches()) {
                String id = name.group(1);
                lessons.put(
                        id,
                        new Later<>(() ->
                                LessonParser.parse(id, shelves.lessons.shown(path), shelves.lessons.whole(path))));
            }
        }
        Map<String, Later<Exercise>> exercises = new TreeMap<>();
        for (String path : shelves.exercises.paths()) {
            var name = EXERCISE_FILE.matcher(path);
            if (name.matches()) {
                exercises.put(name.group(1), new Later<>(() -> exercise(shelves.exercises, path, name.group(1))));
            }
        }
        List<String> names = List.copyOf(lessons.keySet());
        return new Course(
                lessons,
                exercises,
                new Later<>(() -> terms(shelves.lessons)),
                new Later<>(() -> shelves.refused(
                        new RefresherReader(shelves.exercises).read().inOrder(names))));
    }

    /** Lessons and exercises where they are, with what was found wrong with them. */
    private record Shelves(CourseFiles lessons, CourseFiles exercises, List<Fault> faults, List<Fault> exerciseFaults) {

        static Shelves inFolders(Path lessons, Path exercises) {
            List<Fault> faults = new ArrayList<>();
            List<Fault> exerciseFaults = new ArrayList<>();
            return new Shelves(
                    CourseFiles.of("lessons", lessons, faults),
                    CourseFiles.of("exercises", exercises, exerciseFaults),
                    faults,
                    exerciseFaults);
        }

        static Shelves inCode(Path code) throws IOException {
            if (Files.isDirectory(code)) {
                return inFolders(code.resolve(LESSONS), code.resolve(EXERCISES));
            }
            List<Fault> faults = new ArrayList<>();
            List<Fault> exerciseFaults = new ArrayList<>();
            return new Shelves(
                    CourseFiles.inJar("lessons", code, LESSONS, faults),
                    CourseFiles.inJar("exercises", code, EXERCISES, exerciseFaults),
                    faults,
                    exerciseFaults);
        }

        /** What was read, if nothing is wrong with the exercises' side. */
        Refresher refused(Refresher read) {
            if (!exerciseFaults.isEmpty()) {
                throw new RefusedException(exerciseFaults);
            }
            return read;
        }
    }

    /**
     * The course in a writer's folders.
     *
     * @param lessons folder of {@code NN-subject.md} files
     * @param exercises folder of {@code NN-subject/name.json} files
     * @throws RefusedException where anything is wrong in any of them, with every fault found
     */
    public static Course read(Path lessons, Path exercises) {
        return read(Shelves.inFolders(lessons, exercises));
    }

    private static Course read(Shelves shelves) {
        List<Fault> faults = shelves.faults;
        List<Fault> exerciseFaults = shelves.exerciseFaults;
        CourseFiles lessonShelf = shelves.lessons;
        CourseFiles exerciseShelf = shelves.exercises;
        // Side by side, as whoever asks for a whole course waits for this.
        CompletableFuture<Map<String, Exercise>> reading =
                CompletableFuture.supplyAsync(() -> exercises(exerciseShelf, exerciseFaults));
        List<ParsedLesson> parsed = lessons(lessonShelf, faults);
        Map<String, Exercise> read = reading.join();
        List<Term> terms = terms(lessonShelf);
        CrossCheck cross = new CrossCheck(lessonShelf, exerciseShelf, faults);
        cross.check(parsed, read);
        cross.terms(GLOSSARY, terms);
        List<Lesson> lessonList = parsed.stream().map(ParsedLesson::lesson).toList();
        Refresher refresher =
                new RefresherCheck(exerciseShelf, lessonList, read).checked(new RefresherReader(exerciseShelf).read());
        faults.addAll(exerciseFaults);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return Course.of(lessonList, read, terms, refresher);
    }

    private static List<Term> terms(CourseFiles shelf) {
        return shelf.text(GLOSSARY).map(TermsReader::read).orElse(List.of());
    }

    private static Exercise exercise(CourseFiles shelf, String path, String name) {
        return ExerciseReader.read(name, shelf.shown(path), shelf.whole(path));
    }

    private static List<ParsedLesson> lessons(CourseFiles shelf, List<Fault> faults) {
        List<ParsedLesson> parsed = new ArrayList<>();
        for (String path : shelf.paths()) {
            var name = LESSON_FILE.matcher(path);
            if (name.matches()) {
                shelf.text(path).ifPresent(text -> {
                    ParsedLesson lesson = LessonParser.read(name.group(1), shelf.shown(path), text);
                    faults.addAll(lesson.faults());
                    parsed.add(lesson);
                });
            } else if (path.endsWith(".md") && !BESIDE.contains(path)) {
                shelf.fault(path, "", "not a lesson's name", "two digits and words, as in 01-warm-water.md");
            }
        }
        return parsed;
    }

    private static Map<String, Exercise> exercises(CourseFiles shelf, List<Fault> faults) {
        Map<String, Exercise> read = new TreeMap<>();
        for (String path : shelf.paths()) {
            var name = EXERCISE_FILE.matcher(path);
            if (name.matches()) {
                try {
                    read.put(name.group(1), exercise(shelf, path, name.group(1)));
                } catch (RefusedException e) {
                    faults.addAll(e.faults());
                }
            } else if (path.endsWith(".json") && !path.equals(RefresherReader.FILE)) {
                shelf.fault(path, "", "not an exercise's name", "as in 01-warm-water/two-legs.json");
            }
        }
        return read;
    }

    private static RefusedException refusal(String what) {
        return new RefusedException(
                List.of(new Fault("the course", what, "the classes folder or the jar as built", "")));
    }
}
