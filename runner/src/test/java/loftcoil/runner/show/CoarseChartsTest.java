package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.runner.chart.ChartOrder;
import org.junit.jupiter.api.Test;

class CoarseChartsTest {

    private static final CoarseCharts.Of OF = new CoarseCharts.Of("lesson", "step", "java", Example.orchardBothy());

    private final CoarseCharts coarse = new CoarseCharts();

    private static List<ChartOrder> charts(String title, double mark, Double... ys) {
        ChartOrder.Axis axis = new ChartOrder.Axis("axis", "m");
        List<Double> xs = java.util.stream.IntStream.range(0, ys.length)
                .mapToObj(i -> (double) i)
                .toList();
        return List.of(new ChartOrder(
                title,
                axis,
                axis,
                List.of(new ChartOrder.Curve("line", xs, List.of(ys))),
                List.of(new ChartOrder.Mark(mark, "here"))));
    }

    private List<Double> ysAt(double value) {
        return coarse.at(OF, value).get(0).curves().get(0).ys();
    }

    @Test
    void nothingIsDrawnFromNothing() {
        assertEquals(List.of(), coarse.at(OF, 1));
    }

    @Test
    void ofOneValueThatIsKnownItIsThat() {
        coarse.keep(OF, 2, charts("at 2", 1, 1.0, 3.0));

        assertEquals(charts("at 2", 1, 1.0, 3.0), coarse.at(OF, 5));
    }

    @Test
    void betweenTwoValuesPointsAndMarksLieBetween() {
        coarse.keep(OF, 2, charts("at 2", 1, 1.0, 3.0));
        coarse.keep(OF, 6, charts("at 6", 2, 5.0, 3.0));

        // By hand: a quarter of the way from 1 to 5, and of the way from 1 to 2.
        assertEquals(charts("at 2", 1.25, 2.0, 3.0), coarse.at(OF, 3));
    }

    @Test
    void beyondTheEndsTheEndStands() {
        coarse.keep(OF, 2, charts("at 2", 1, 1.0));
        coarse.keep(OF, 6, charts("at 6", 2, 5.0));

        assertEquals(List.of(5.0), ysAt(7));
        assertEquals(List.of(1.0), ysAt(0));
    }

    @Test
    void whereTheNumberOfPointsDiffersItIsTheNearer() {
        coarse.keep(OF, 2, charts("at 2", 1, 1.0, 3.0));
        coarse.keep(OF, 6, charts("at 6", 2, 5.0));

        assertEquals(List.of(1.0, 3.0), ysAt(3));
        assertEquals(List.of(5.0), ysAt(5));
    }

    @Test
    void aGapIsThatOfTheNearer() {
        coarse.keep(OF, 2, charts("at 2", 1, Double.NaN));
        coarse.keep(OF, 6, charts("at 6", 2, 5.0));

        assertEquals(List.of(Double.NaN), ysAt(3));
        assertEquals(List.of(5.0), ysAt(5));
    }

    @Test
    void otherJavaOrAnotherDesignHasNothingOfIt() {
        coarse.keep(OF, 2, charts("at 2", 1, 1.0));

        assertEquals(List.of(), coarse.at(new CoarseCharts.Of("lesson", "step", "other", OF.design()), 2));
        assertEquals(
                List.of(),
                coarse.at(
                        new CoarseCharts.Of(
                                "lesson", "step", "java", OF.design().withTankBaseM(2.5)),
                        2));
    }

    @Test
    void howeverManyValuesThereWereTheSpreadStays() {
        for (int i = 0; i <= 400; i++) {
            coarse.keep(OF, i, charts("", 0, (double) i));
        }

        assertEquals(List.of(400.0), ysAt(500));
        // Between the values that are left it is still the straight line they lie on.
        assertEquals(200.5, ysAt(200.5).get(0), 1e-9);
    }
}
