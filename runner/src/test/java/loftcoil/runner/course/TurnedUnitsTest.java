package loftcoil.runner.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.words.Units;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.show.ChartUnits;
import org.junit.jupiter.api.Test;

/** What the course plots and reads off stays true when it is turned into the units of the reader. */
class TurnedUnitsTest {

    private static final Pattern AXIS = Pattern.compile("\\.(?:across|up)\\(\"([^\"]+)\",\\s*\"([^\"]*)\"");
    private static final Pattern DIFFERENCE = Pattern.compile("(?i)\\b(?:minus|less pipe|difference|degrees to)\\b");

    /** A unit in words beside one that is turned: Btu on a square metre. */
    private static final Pattern METRIC_WORD = Pattern.compile("(?i)\\b(?:metre|square metre|kilogram|kilo)s?\\b");

    private final Course course = CourseReader.builtIn();

    @Test
    void aDifferenceOfTemperaturesIsSaidToBeOne() {
        List<String> wrong = new ArrayList<>();
        int differences = 0;
        for (Matcher axis : axes()) {
            if (DIFFERENCE.matcher(axis.group(1)).find()) {
                differences++;
                if (axis.group(2).equals("°C")) {
                    wrong.add(axis.group());
                }
            }
        }
        for (Mend.Reading reading : readings()) {
            if (DIFFERENCE.matcher(reading.label()).find()) {
                differences++;
                if (reading.unit().equals("°C")) {
                    wrong.add(reading.label());
                }
            }
        }
        assertTrue(differences >= 8, differences + " were seen");
        assertEquals(List.of(), wrong);
    }

    @Test
    void noAxisNamesAMetricUnitInWordsBesideOneThatIsTurned() {
        List<String> wrong = axes().stream()
                .filter(axis -> METRIC_WORD.matcher(axis.group(1)).find()
                        && !new ChartOrder.Axis("", axis.group(2)).equals(turned(axis.group(2))))
                .map(Matcher::group)
                .toList();

        assertEquals(List.of(), wrong);
    }

    /** 9 °F are 5 °C apart, by the definition of the degree Fahrenheit. */
    @Test
    void anAxisOfDifferencesBeginsAtNoFreezingPoint() {
        ChartOrder turned = ChartUnits.in(
                Units.US,
                new ChartOrder(
                        "t",
                        new ChartOrder.Axis("Pipe out minus pipe in", "°C apart"),
                        new ChartOrder.Axis("Flow", "L/min"),
                        List.of(new ChartOrder.Curve("c", List.of(5.0, 40.0), List.of(1.0, 2.0))),
                        List.of(new ChartOrder.Mark(15, "15 °C apart"))));

        assertEquals("°F apart", turned.across().unit());
        assertEquals(9, turned.curves().get(0).xs().get(0), 1e-9);
        assertEquals(72, turned.curves().get(0).xs().get(1), 1e-9);
        assertEquals(27, turned.marks().get(0).at(), 1e-9);
        assertEquals("27 °F apart", turned.marks().get(0).words());
    }

    private static ChartOrder.Axis turned(String unit) {
        ChartOrder.Axis axis = new ChartOrder.Axis("", unit);
        return ChartUnits.in(Units.US, new ChartOrder("t", axis, axis, List.of(), List.of()))
                .up();
    }

    private List<Matcher> axes() {
        List<Matcher> axes = new ArrayList<>();
        for (Lesson lesson : course.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Snippet snippet) {
                    Matcher axis = AXIS.matcher(snippet.source());
                    int from = 0;
                    while (axis.find(from)) {
                        from = axis.end();
                        axes.add(axis);
                        axis = AXIS.matcher(snippet.source());
                    }
                }
            }
        }
        assertTrue(axes.size() > 80, axes.size() + " axes");
        return axes;
    }

    private List<Mend.Reading> readings() {
        return course.exercises().values().stream()
                .filter(Mend.class::isInstance)
                .flatMap(mend -> ((Mend) mend).readings().stream())
                .toList();
    }
}
