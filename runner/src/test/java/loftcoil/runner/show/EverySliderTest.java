package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every slider of the course: what it is dragged to comes to the same as without dragging. */
@Tag("thorough")
class EverySliderTest {

    private static final double PART = 0.3;

    @TempDir
    private Path folder;

    @Test
    void aDraggedRunIsEqualToOneThatWasNotDragged() {
        Course course = CourseReader.builtIn();
        List<String> walked = new ArrayList<>();
        try (CourseApp bench = CourseApp.open(course, ProgressFile.open(folder), SharedSession::lent, 1)) {
            for (View.LessonLine line : bench.course().lessons()) {
                for (View.Snippet snippet : sliders(bench, line.id())) {
                    compare(bench, line.id(), snippet);
                    walked.add(line.id() + "/" + snippet.id());
                }
            }
        }
        assertTrue(walked.size() > 30, () -> "sliders walked: " + walked);
    }

    private static List<View.Snippet> sliders(CourseApp bench, String lesson) {
        return bench.lesson(lesson).steps().stream()
                .filter(View.Snippet.class::isInstance)
                .map(View.Snippet.class::cast)
                .filter(snippet -> snippet.drag().isPresent())
                .toList();
    }

    private static void compare(CourseApp bench, String lesson, View.Snippet snippet) {
        Slider slider = snippet.drag().orElseThrow();
        Map<String, Double> start = Map.of(slider.variable(), slider.start());
        Map<String, Double> end = Map.of(slider.variable(), slider.to());
        Map<String, Double> there = Map.of(
                slider.variable(),
                slider.from() + slider.by() * Math.rint((slider.to() - slider.from()) / slider.by() * PART));
        bench.run(lesson, snippet.id(), snippet.source(), start);
        bench.run(lesson, snippet.id(), snippet.source(), end);
        bench.ahead(lesson, snippet.id(), snippet.source(), start, end);
        View.Run dragged = bench.run(lesson, snippet.id(), snippet.source(), there);
        // Another lesson in between, so that nothing of the dragging is left.
        String other = bench.course().lessons().stream()
                .map(View.LessonLine::id)
                .filter(id -> !id.equals(lesson))
                .findFirst()
                .orElseThrow();
        String elsewhere = bench.lesson(other).steps().stream()
                .filter(View.Snippet.class::isInstance)
                .map(View.Step::id)
                .findFirst()
                .orElseThrow();
        bench.run(other, elsewhere, "1", Map.of());
        View.Run fresh = bench.run(lesson, snippet.id(), snippet.source(), there);

        String where = lesson + "/" + snippet.id();
        assertEquals(View.RunState.DONE, fresh.state(), where);
        assertEquals(fresh.printed(), dragged.printed(), where);
        assertEquals(fresh.value(), dragged.value(), where);
        assertEquals(rows(fresh), rows(dragged), where);
    }

    private static List<List<List<String>>> rows(View.Run run) {
        return run.charts().stream().map(View.Picture::rows).toList();
    }
}
