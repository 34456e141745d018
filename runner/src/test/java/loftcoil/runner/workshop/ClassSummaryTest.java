package loftcoil.runner.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.runner.course.Course;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.Progress.Given;
import loftcoil.runner.progress.Progress.LessonWork;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassSummaryTest {

    private static final Course COURSE = TryCourse.read();
    private static final String LESSON = "01-try";
    private static final Given WRONG = new Given("9 Pa", AnswerState.WRONG, "no gravity");
    private static final Given RIGHT = new Given("88 Pa", AnswerState.RIGHT, "");
    private static final Given DOWN = new Given("down", AnswerState.WRONG, "choice 2");

    @TempDir
    private Path folder;

    private void learner(String name, LessonWork work) {
        keep(name, Progress.start(1).withLesson(LESSON).withWork(LESSON, work));
    }

    private void keep(String name, Progress progress) {
        try (ProgressFile file = ProgressFile.open(folder.resolve(name))) {
            file.keep(progress);
        }
    }

    private ClassRoll roll() throws IOException {
        return ClassRoll.read(folder, (at, of) -> {});
    }

    private ClassSummary summary() throws IOException {
        return ClassSummary.of(COURSE, roll());
    }

    /** Three learners: at once right; right after a known mistake; wrong twice without and with a known idea. */
    private void aClass() {
        learner("Ada", LessonWork.NONE.withAnswer("head", RIGHT).withStep("head"));
        learner(
                "Bo",
                LessonWork.NONE
                        .withAnswer("head", new Given("much", AnswerState.UNREAD, ""))
                        .withAnswer("head", WRONG)
                        .withAnswer("head", WRONG)
                        .withAnswer("head", RIGHT)
                        .withAnswer("way", DOWN)
                        .withStep("way"));
        keep(
                "Cy/loftcoil",
                Progress.start(1)
                        .withLesson(LESSON)
                        .withWork(
                                LESSON,
                                LessonWork.NONE
                                        .withAnswer("guess", new Given("3", AnswerState.NOTED, ""))
                                        .withAnswer("head", new Given("1 Pa", AnswerState.WRONG, ""))
                                        .withAnswer("head", WRONG)
                                        .withAnswer("tank", new Given("2.5", AnswerState.DECIDED, "")))
                        .withRefreshed("01-try/way", AnswerState.FORGOTTEN));
    }

    @Test
    void eachLearnerHasARowWithWhatIsDoneAndWhereTheWorkStands() throws IOException {
        aClass();
        List<ClassSummary.LearnerRow> rows = summary().learners();
        assertEquals(
                List.of("Ada", "Bo", "Cy"),
                rows.stream().map(ClassSummary.LearnerRow::name).toList());
        assertEquals(List.of(1, 0), rows.get(0).done());
        assertEquals(List.of(1, 0), rows.get(1).done());
        assertEquals("A first try, at “which way”", rows.get(1).last());
        assertEquals(4, rows.get(1).tries());
        assertEquals(3, rows.get(1).wrong());
        assertEquals(List.of(1, 0), rows.get(2).done());
        assertEquals(List.of("A first try"), rows.get(2).faded());
        assertEquals(3, summary().lessons().get(0).of());
    }

    @Test
    void eachQuestionSaysWhomItTripsAndWithWhichIdea() throws IOException {
        aClass();
        List<ClassSummary.QuestionRow> hard = summary().tripping();
        ClassSummary.QuestionRow head = hard.get(0);
        assertEquals("head", head.label());
        assertEquals(3, head.tried());
        assertEquals(1, head.rightFirst());
        assertEquals(1, head.rightLater());
        assertEquals(List.of("Cy"), head.wrong());
        assertEquals(List.of(Map.entry("no gravity", 2)), head.ideas());
        assertEquals(1, head.otherWrong());
        ClassSummary.QuestionRow way = hard.get(1);
        assertEquals(List.of(Map.entry("“down”", 1)), way.ideas());
        assertEquals(List.of("Bo"), way.wrong());
        assertEquals(2, hard.size());
    }

    @Test
    void damagedFilesAreNamedAndTheOthersStillCount() throws IOException {
        aClass();
        Files.createDirectories(folder.resolve("Dee"));
        Files.writeString(folder.resolve("Dee/progress.json"), "{ not json");
        Files.createDirectories(folder.resolve("Empty"));
        Files.writeString(folder.resolve("Eli.json"), "{\"version\": 99}");
        Files.write(folder.resolve("Fay.json"), new byte[] {(byte) 0xff, (byte) 0xfe});
        Files.copy(folder.resolve("Ada/progress.json"), folder.resolve("Gus.json"));
        Files.writeString(folder.resolve("notes.txt"), "not a learner");
        Files.writeString(folder.resolve(".hidden.json"), "{}");

        ClassRoll roll = roll();

        assertEquals(
                List.of("Ada", "Bo", "Cy", "Gus"),
                roll.learners().stream().map(ClassRoll.Learner::name).toList());
        Map<String, String> why =
                roll.skipped().stream().collect(Collectors.toMap(ClassRoll.Skipped::name, ClassRoll.Skipped::why));
        assertEquals(Set.of("Dee", "Empty", "Eli", "Fay"), why.keySet());
        assertTrue(why.get("Dee").contains("line 1"), why.toString());
        assertEquals("a newer Loftcoil wrote it", why.get("Eli"));
        assertEquals("it is not UTF-8 text", why.get("Fay"));
        assertTrue(Files.exists(folder.resolve("Dee/progress.json")), "a teacher's look moves no file");
        assertFalse(Files.exists(folder.resolve("Dee/progress.damaged-1.json")));
    }

    @Test
    void anEmptyFolderSaysWhatToDo() throws IOException {
        String page = SummaryHtml.write(summary());
        assertTrue(page.contains("No learner’s work was found"), page);
        assertEquals(1, SummaryCsv.write(COURSE, roll()).lines().count());
    }

    @Test
    void workInALessonTheCourseNoLongerHasIsNoTrouble() throws IOException {
        keep(
                "Old",
                Progress.start(1)
                        .withLesson("09-gone")
                        .withWork("09-gone", LessonWork.NONE.withStep("x").withAnswer("x", RIGHT)));
        assertEquals("09-gone, at “x”", summary().learners().get(0).last());
        assertEquals(List.of(0, 0), summary().learners().get(0).done());
    }

    @Test
    void thePageIsSelfContainedAndEscapesNames() throws IOException {
        learner("<b>&\"x\"", LessonWork.NONE.withAnswer("head", WRONG));
        String page = SummaryHtml.write(summary());
        assertTrue(page.contains("&lt;b&gt;&amp;&quot;x&quot;"), page);
        assertFalse(page.contains("<b>"), page);
        assertFalse(page.contains("<script") || page.contains("http://") || page.contains("https://"), page);
        assertTrue(
                page.contains("lang=\"en\"") && page.contains("prefers-color-scheme") && page.contains("@media print"));
    }
}
