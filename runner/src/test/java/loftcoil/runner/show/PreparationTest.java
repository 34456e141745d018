package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Exercise;
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
    void howAPlotIsPutTogetherIsFoldedInAShortSnippetToo() {
        assertEquals(
                List.of(new View.Fold(3, 5)),
                Preparation.of(
                        """
                        double[] temps = steps(0, 100, 1);
                        plot("Weight")
                            .across("Temperature", "°C", temps)
                            .curve("water", each(temps, t -> Water.densityKgPerM3(t)))
                            .show();
                        """));
    }

    /** A welder reads loops and calls: no streams, no functions handed about, no boxes around values. */
    @Test
    void nothingFunctionalStandsInPlainViewInTheCourse() {
        Pattern functional = Pattern.compile(
                "->|::|\\bstream|\\.map\\(|\\.mapTo|\\.filter\\(|Function\\b|Operator\\b|Supplier|Optional|orElse|ifPresent|\\.get\\(\\)");
        List<String> seen = new ArrayList<>();
        Course course = CourseReader.builtIn();
        for (var lesson : course.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Snippet snippet) {
                    List<String> lines =
                            new ArrayList<>(snippet.source().lines().toList());
                    for (View.Fold fold : Preparation.of(snippet.source())) {
                        lines.subList(fold.from() - 1, fold.to()).replaceAll(line -> "");
                    }
                    lines.stream()
                            .filter(line -> functional.matcher(line).find())
                            .forEach(line -> seen.add(lesson.id() + " " + snippet.id() + ": " + line.strip()));
                }
            }
        }
        for (Exercise exercise : course.exercises().values()) {
            if (exercise instanceof Code code) {
                Stream.concat(
                                code.starter().lines(),
                                code.lines().stream().flatMap(List::stream).flatMap(String::lines))
                        .filter(line -> functional.matcher(line).find())
                        .forEach(line -> seen.add(exercise.path() + ": " + line.strip()));
            }
        }
        assertEquals(List.of(), seen);
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
