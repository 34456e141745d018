package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import org.junit.jupiter.api.Test;

class CourseSearchTest {

    private static final Course COURSE = CourseReader.builtIn();
    private final CourseSearch search = new CourseSearch(
            COURSE, (lesson, asked) -> COURSE.exercise(asked.exercise()).text());

    @Test
    void aTermComesFirstThenTheLessonsThatSpeakOfIt() {
        List<View.Found> found = search.find("boiling margin");
        assertEquals("word", found.get(0).kind());
        assertTrue(found.get(0).head().equalsIgnoreCase("boiling margin"), found.toString());
        assertTrue(found.stream().anyMatch(each -> each.lesson().equals("02-tank-above-coil")), found.toString());
    }

    @Test
    void capitalsAccentsAndTheOrderOfWordsDoNotCount() {
        assertEquals(
                search.find("tank height").stream().map(View.Found::step).toList(),
                search.find("  HÉIGHT  Tänk ").stream().map(View.Found::step).toList());
        assertEquals("resume", CourseSearch.fold("Résumé"));
        assertEquals(3, CourseSearch.fold("ﬁx²".substring(0, 3)).length());
    }

    @Test
    void everyWordMustBeThereAndNothingFindsNothing() {
        assertEquals(List.of(), search.find("tank zebra"));
        assertEquals(List.of(), search.find("   "));
        assertEquals(List.of(), search.find("\\E(["));
    }

    @Test
    void everyPlaceFoundIsThereAndItsExcerptSaysWhy() {
        for (String sought : List.of("coil", "Pa", "frost", "densityKgPerM3", "how low may the tank")) {
            List<View.Found> found = search.find(sought);
            assertTrue(!found.isEmpty() && found.size() <= 40, sought);
            for (View.Found each : found) {
                assertTrue(
                        each.kind().equals("word")
                                || COURSE.lesson(each.lesson()).orElseThrow().steps().stream()
                                        .anyMatch(step -> step.id().equals(each.step())),
                        each.toString());
            }
        }
    }
}
