package loftcoil.runner.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlotTest {

    private static final double[] XS = {0, 1, 2};

    private static Plot begun() {
        return Plot.plot("Head").across("Rise", "m", XS).up("Head", "Pa");
    }

    private static String refusal(Runnable bad) {
        RefusedException refused = assertThrows(RefusedException.class, bad::run);
        assertEquals(1, refused.faults().size());
        return refused.getMessage();
    }

    @Test
    void stepsIncludeBothEndsAndDoNotDrift() {
        double[] steps = Plot.steps(0, 1, 0.1);
        assertEquals(11, steps.length);
        for (int i = 0; i < steps.length; i++) {
            assertEquals(i / 10.0, steps[i], 1e-15);
        }
        assertEquals(1.0, steps[10]);
        assertArrayEquals(new double[] {-1, -0.5, 0}, Plot.steps(-1, 0.2, 0.5));
        assertArrayEquals(new double[] {2}, Plot.steps(2, 2, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0,1,0,steps.by",
        "0,1,-1,steps.by",
        "1,0,1,steps.to",
        "NaN,1,1,steps.from",
        "0,Infinity,1,steps.to",
        "0,1,NaN,steps.by",
        "0,1,0.00001,steps.by",
        "0,1e300,1e-300,steps.by"
    })
    void badStepsAreRefusedByName(double from, double to, double by, String path) {
        RefusedException refused = assertThrows(RefusedException.class, () -> Plot.steps(from, to, by));
        assertTrue(refused.faults().stream().anyMatch(fault -> fault.path().equals(path)), refused.getMessage());
    }

    @Test
    void tenThousandStepsAreTheMost() {
        assertEquals(10_000, Plot.steps(0, 9999, 1).length);
        assertThrows(RefusedException.class, () -> Plot.steps(0, 10_000, 1));
    }

    @Test
    void aCurveMustHaveAsManyValuesAsPositions() {
        String words = refusal(() -> begun().curve("forward", new double[] {1, 2}));
        assertEquals("curve \"forward\": 2 values; allowed: as many as across() has: 3", words);
        assertTrue(refusal(() -> Plot.plot("a").curve("c", XS)).contains("across(…) comes before curve(…)"));
        assertTrue(refusal(() -> begun().points("p", XS, new double[] {1})).contains("as many as positions: 3"));
    }

    @Test
    void aPlotWithoutACurveOrANumberIsRefused() {
        assertTrue(refusal(() -> begun().show()).contains("at least one curve"));
        double[] none = {Double.NaN, Double.NaN, Double.POSITIVE_INFINITY};
        assertTrue(refusal(() -> begun().curve("c", none).show()).contains("nothing to draw"));
        assertTrue(refusal(() -> begun().mark(Double.NaN, "here")).contains("finite"));
        assertTrue(refusal(() -> Plot.plot("a").across("x", "m", new double[] {Double.NaN}))
                .contains("finite"));
    }

    @Test
    void eachCallGivesANewPlot() {
        Plot begun = begun();
        Plot one = begun.curve("one", XS);
        begun.curve("two", XS).mark(1, "here");
        assertEquals(List.of(), begun.order().curves());
        assertEquals(
                List.of("one"), one.order().curves().stream().map(c -> c.name()).toList());
    }

    @Test
    void theOrderSurvivesTheWayThroughJson() {
        ChartOrder order = begun().curve("c", new double[] {1.5e-7, Double.NaN, Double.NEGATIVE_INFINITY})
                .points("p \"quoted\" ✓\n", new double[] {0.5}, new double[] {2})
                .mark(1, "boils")
                .order();
        String line = ChartJson.write(order);
        assertEquals(-1, line.indexOf('\n'));
        assertEquals(order, ChartJson.read(line));
        assertThrows(IllegalArgumentException.class, () -> ChartJson.read("{\"title\":3"));
    }

    @Test
    void withoutAScreenTheNumbersAreATable() {
        String text = ChartText.of(begun().curve("c", new double[] {1, Double.NaN, 2.5})
                .mark(1, "boils")
                .order());
        assertEquals(
                "Head\nRise [m]  c [Pa]\n       0     1.0\n       1       –\n       2     2.5\nat 1: boils\n", text);
    }
}
