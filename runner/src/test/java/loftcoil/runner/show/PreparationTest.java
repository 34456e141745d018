package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.lesson.Step;
import org.junit.jupiter.api.Test;

class PreparationTest {

    private static final String SOURCE =
            """
            double flowAt(double baseM) {
                return design.withTankBaseM(baseM).circuit(40).search()
                    .forward().orElse(Double.NaN);   // no flow }
            }

            double[] heights = steps(-1, 3.5, 0.1);

            plot("Flow; against { height")
                .across("Tank base", "m", heights)
                .curve("flow", each(heights, h -> flowAt(h)))
                .show();
            for (double m = 0; m < 1; m += 0.1) {
                m += 0.2;
                System.out.println(m);
            }
            System.out.println(1);
            """;

    @Test
    void methodsAndPlotsAreFoldedAndWhatIsWorthChangingIsNot() {
        assertEquals(List.of(new View.Fold(2, 4), new View.Fold(9, 11)), Preparation.of(SOURCE));
    }

    @Test
    void aShortSnippetIsWholeAndBrokenJavaToo() {
        assertEquals(List.of(), Preparation.of("double f(double x) {\n  return\n  x;\n}\n"));
        assertEquals(
                List.of(),
                Preparation.of(SOURCE.replace("System.out.println(1);", "}").replace("plot", "x = plot")).stream()
                        .filter(fold -> fold.to() > SOURCE.lines().count())
                        .toList());
        assertEquals(List.of(), Preparation.of(""));
    }

    @Test
    void noLineThatGivesANumberANameIsFoldedInTheCourse() {
        Course course = CourseReader.builtIn();
        int folded = 0;
        for (var lesson : course.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Snippet snippet) {
                    List<String> lines = snippet.source().lines().toList();
                    for (View.Fold fold : Preparation.of(snippet.source())) {
                        folded += fold.count();
                        assertTrue(fold.to() <= lines.size(), snippet.id());
                        assertTrue(
                                lines.subList(fold.from() - 1, fold.to()).stream()
                                        .noneMatch(line -> line.matches("(double|int) \\w+ = -?[\\d.]+;.*")),
                                snippet.id());
                    }
                }
            }
        }
        assertTrue(folded > 300, folded + " lines folded");
    }
}
