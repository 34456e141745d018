package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseReaderTest {

    private static final String CHOICE =
            """
            {"kind": "choice", "text": "Which?", "source": "s", "solution": {"text": "t"},
             "choices": [{"text": "a", "right": true, "say": "yes"}, {"text": "b", "right": false, "say": "no"}]}
            """;

    @TempDir
    Path temp;

    @BeforeEach
    void aSoundCourse() throws IOException {
        lesson(
                "01-warm",
                "",
                "[Question: a](../exercises/01-warm/a.json)\n\nSee [words](words.md#x) and [that](02-tank.md).\n");
        lesson("02-tank", "01-warm", "[Predict: b](../exercises/02-tank/b.json)\n\nUp: [there](#t).\n");
        file("lessons/words.md", "# Words\n");
        file("lessons/drawings/your-loop.svg", "<svg/>");
        file("exercises/01-warm/a.json", CHOICE);
        file(
                "exercises/02-tank/b.json",
                CHOICE.replace("\"text\": \"Which?\"", "\"when\": \"before\", \"text\": \"Which?\""));
    }

    private void lesson(String id, String needs, String body) throws IOException {
        file("lessons/" + id + ".md", "---\ntitle: T\nstep: 1\nminutes: 20\nneeds: " + needs + "\n---\n# T\n\n" + body);
    }

    private Path file(String path, String text) throws IOException {
        Path file = temp.resolve("loftcoil").resolve(path);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Course read() {
        return CourseReader.read(temp.resolve("loftcoil/lessons"), temp.resolve("loftcoil/exercises"));
    }

    private List<String> faults() {
        return assertThrows(RefusedException.class, this::read).faults().stream()
                .map(Fault::line)
                .map(words -> words.replaceFirst("; allowed: .*", ""))
                .sorted()
                .toList();
    }

    private static void isTheSoundCourse(Course course) {
        assertEquals(
                List.of("01-warm", "02-tank"),
                course.lessons().stream().map(Lesson::id).toList());
        assertEquals(Set.of("01-warm/a", "02-tank/b"), course.exercises().keySet());
        assertTrue(course.exercise("02-tank/b").before());
        assertThrows(IllegalArgumentException.class, () -> course.exercise("02-tank/c"));
    }

    @Test
    void theGlossaryIsReadAndHeldToTheLessons() throws IOException {
        file(
                "lessons/words.md",
                """
                # Words

                **Bold** begins no entry here.

                **hot leg**: the pipe *up* to
                the tank. [Lesson 2](02-tank.md)

                **pascal (Pa)**: a unit.
                """);
        assertEquals(
                List.of(
                        new Term("hot leg", "the pipe *up* to\nthe tank.", "02-tank"),
                        new Term("pascal (Pa)", "a unit.", "")),
                read().terms());

        file("lessons/words.md", "**a**: b. [Lesson 9](09-gone.md)\n\n**A**: c.\n");
        assertEquals(
                List.of(
                        "lessons/words.md: “A” a second time",
                        "lessons/words.md: “a” names lesson 09-gone, which is not there"),
                faults());
    }

    @Test
    void aCourseWithoutAGlossaryHasNoTerms() throws IOException {
        Files.delete(temp.resolve("loftcoil/lessons/words.md"));
        lesson("01-warm", "", "[Question: a](../exercises/01-warm/a.json)\n");
        assertEquals(List.of(), read().terms());
    }

    @Test
    void readFromFolders() {
        isTheSoundCourse(read());
    }

    @Test
    void readFromClassesAndFromAJarWithoutEntriesForFolders() throws IOException {
        isTheSoundCourse(CourseReader.fromCode(temp));
        Path jar = temp.resolve("a jar with blanks.jar");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar));
                Stream<Path> files = Files.walk(temp.resolve("loftcoil"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                zip.putNextEntry(new ZipEntry(temp.relativize(file).toString().replace('\\', '/')));
                zip.write(Files.readAllBytes(file));
            }
        }
        isTheSoundCourse(CourseReader.fromCode(jar));
    }

    @Test
    void theProgramsOwnCourseIsSound() {
        Course course = CourseReader.builtIn();
        assertTrue(course.lesson("01-warm-water").isPresent());
        assertTrue(
                course.exercises().size() >= course.lessons().size(),
                course.exercises().keySet()::toString);
    }

    @Test
    void readAsAskedItIsTheSameCourse() {
        Course whole = CourseReader.builtIn();
        Course asked = CourseReader.builtInAsAsked();
        assertEquals(whole.names(), asked.names());
        assertEquals(whole.lesson("02-tank-above-coil"), asked.lesson("02-tank-above-coil"));
        assertEquals(whole.lessons(), asked.lessons());
        assertEquals(whole.exercises(), asked.exercises());
        assertEquals(whole.terms(), asked.terms());
        assertEquals(whole.refresher(), asked.refresher());
        List<String> two = whole.names().subList(3, 5);
        assertEquals(two, asked.only(two).names());
        assertEquals(whole.only(two).refresher(), asked.only(two).refresher());
    }

    @Test
    void readAsAskedOnlyWhatIsFaultyIsRefused() throws IOException {
        file("exercises/01-warm/a.json", "{");
        file("lessons/02-tank.md", "no heading");
        Course asked = CourseReader.asAsked(temp);
        assertEquals(List.of("01-warm", "02-tank"), asked.names());
        assertEquals("T", asked.lesson("01-warm").orElseThrow().title());
        assertTrue(asked.exercise("02-tank/b").before());
        String exercise = assertThrows(RefusedException.class, () -> asked.exercise("01-warm/a"))
                .getMessage();
        assertTrue(exercise.contains("exercises/01-warm/a.json"), exercise);
        String lesson = assertThrows(RefusedException.class, () -> asked.lesson("02-tank"))
                .getMessage();
        assertTrue(lesson.contains("lessons/02-tank.md"), lesson);
    }

    @Test
    void faultsOfAllFilesComeAtOnce() throws IOException {
        lesson("01-warm", "02-tank", "[Decide: a](../exercises/01-warm/a.json)\n\n[gone](gone.md)\n\n```java\n1\n");
        lesson(
                "02-tank",
                "01-warm",
                """
                [Predict: b](../exercises/02-tank/b.json)

                [Question: a](../exercises/01-warm/a.json)

                [Question: c](../exercises/02-tank/c.json)
                """);
        lesson("02-twice", "", "text\n");
        file("lessons/notes.md", "hello");
        file("exercises/02-tank/unused.json", CHOICE);
        file("exercises/02-tank/broken.json", "{");
        file("exercises/loose.json", CHOICE);
        assertEquals(
                List.of(
                        "exercises/02-tank/broken.json: text that is not JSON at line 1, column 2",
                        "exercises/02-tank/unused.json: used by no lesson",
                        "exercises/loose.json: not an exercise's name",
                        "lessons/01-warm.md:11:1: link to “gone.md”, where there is nothing",
                        "lessons/01-warm.md:13:1: a fence that is never closed",
                        "lessons/01-warm.md:13:1: a java snippet without a name",
                        "lessons/01-warm.md:1: needs 02-tank, which is no earlier lesson",
                        "lessons/01-warm.md:9:1: Decide: for 01-warm/a",
                        "lessons/02-tank.md:11:1: exercise 01-warm/a is used already, by 01-warm.md:9",
                        "lessons/02-tank.md:13:1: exercise 02-tank/c does not exist",
                        "lessons/02-twice.md: the same number as 02-tank",
                        "lessons/notes.md: not a lesson's name"),
                faults());
    }

    @Test
    void withoutLessonsTheExercisesAreNotCountedUp() throws IOException {
        Path exercises = TryCourse.folder().resolve("exercises");
        Path none = temp.resolve("none");
        RefusedException refused = assertThrows(RefusedException.class, () -> CourseReader.read(none, exercises));
        assertEquals(2, refused.faults().size(), refused::getMessage);
        assertTrue(refused.getMessage().contains("no such folder: " + none), refused::getMessage);
    }

    @Test
    void foldersThatAreNoneAreTold() throws IOException {
        Path empty = Files.createDirectories(temp.resolve("empty"));
        RefusedException refused =
                assertThrows(RefusedException.class, () -> CourseReader.read(empty, temp.resolve("none")));
        assertEquals(2, refused.faults().size(), refused::getMessage);
        assertTrue(refused.getMessage().contains("exercises: no such folder"), refused::getMessage);
        assertTrue(refused.getMessage().contains("lessons: no lesson"), refused::getMessage);
    }

    @Test
    void filesThatAreHugeOrNoTextAreTold() throws IOException {
        Path huge = file("lessons/03-huge.md", "");
        try (RandomAccessFile large = new RandomAccessFile(huge.toFile(), "rw")) {
            large.setLength(50_000_000);
        }
        Files.write(file("lessons/04-bytes.md", ""), new byte[] {(byte) 0xff});
        assertEquals(
                List.of("lessons/03-huge.md: 50000000 bytes long", "lessons/04-bytes.md: not UTF-8 text"), faults());
    }

    @Test
    void hiddenFilesAreNobodysLesson() throws IOException {
        file("lessons/.swap.md", "x");
        file("exercises/.git/x.json", "x");
        isTheSoundCourse(read());
    }

    private static final String TWO =
            """
            {"seed": 1, "lessons": {"01-warm": [{"exercise": "01-warm/a", "seconds": 20}, {"exercise": "01-warm/c", "seconds": 30}]}}
            """;

    private void aLessonWithTwoQuestions() throws IOException {
        lesson(
                "01-warm",
                "",
                "[Question: a](../exercises/01-warm/a.json)\n\n[Question: c](../exercises/01-warm/c.json)\n");
        file("exercises/01-warm/c.json", CHOICE);
    }

    @Test
    void aRefresherIsReadInTheOrderOfTheCourse() throws IOException {
        aLessonWithTwoQuestions();
        file("exercises/refresher.json", TWO);
        Refresher refresher = read().refresher();
        assertEquals(1, refresher.seed());
        assertEquals(50, refresher.seconds());
        assertEquals(
                List.of("01-warm/a", "01-warm/c"),
                refresher.questions().stream().map(Refresher.Quick::exercise).toList());
        assertEquals(0, read().only(List.of("02-tank")).refresher().seconds());
    }

    @Test
    void withoutItsFileThereIsNoRefresher() {
        assertEquals(Refresher.NONE, read().refresher());
    }

    @Test
    void everyFaultOfARefresherIsNamedWithItsField() throws IOException {
        aLessonWithTwoQuestions();
        for (String[] wrong : new String[][] {
            {"{", "exercises/refresher.json: text that is not JSON at line 1, column 2"},
            {"{\"seed\": x}", "exercises/refresher.json: text that is not JSON at line 1, column 10"},
            {"[]", "exercises/refresher.json: a JSON array"},
            {TWO.replace("\"seed\": 1", "\"seed\": \"x\""), "exercises/refresher.json: seed: \"x\""},
            {TWO.replace("30", "300"), "exercises/refresher.json: lessons.01-warm[1].seconds: 300"},
            {TWO.replace("\"seconds\": 30", "\"minutes\": 30"), "lessons.01-warm[1].minutes: \"minutes\""},
            {TWO.replace("01-warm/c", "01-warm/a"), "lessons.01-warm[1].exercise: 01-warm/a is asked twice"},
            {TWO.replace("01-warm/c", "02-tank/b"), "lessons.01-warm[1].exercise: 02-tank/b is no question of this"},
            {"{\"two\\nlines\": 1}", "exercises/refresher.json: two lines: \"two lines\""},
            {TWO.replace("\"01-warm\":", "\"09-gone\":"), "lessons.09-gone: no lesson of that name"},
            {TWO.replace(", {\"exercise\": \"01-warm/c\", \"seconds\": 30}", ""), "lessons.01-warm: 1 questions"},
        }) {
            file("exercises/refresher.json", wrong[0]);
            assertTrue(faults().stream().anyMatch(fault -> fault.contains(wrong[1])), wrong[1] + " in " + faults());
        }
    }

    @Test
    void aRefresherOfMoreThanAQuarterOfAnHourIsRefused() throws IOException {
        StringBuilder body = new StringBuilder();
        StringBuilder lessons = new StringBuilder();
        for (int lesson = 3; lesson < 8; lesson++) {
            body.setLength(0);
            lessons.append(lesson > 3 ? "," : "").append("\"0" + lesson + "-more\": [");
            for (int i = 0; i < 2; i++) {
                file("exercises/0" + lesson + "-more/x" + i + ".json", CHOICE);
                body.append("[Question: x](../exercises/0" + lesson + "-more/x" + i + ".json)\n\n");
                lessons.append(i > 0 ? "," : "")
                        .append("{\"exercise\": \"0" + lesson + "-more/x" + i + "\", \"seconds\": 100}");
            }
            lessons.append("]");
            lesson("0" + lesson + "-more", "", body.toString());
        }
        file("exercises/refresher.json", "{\"seed\": 1, \"lessons\": {" + lessons + "}}");
        assertEquals(List.of("exercises/refresher.json: lessons: 1000 seconds in all"), faults());
    }
}
