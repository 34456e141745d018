package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.words.Units;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.chart.Plot;
import loftcoil.runner.session.Outcome;
import org.junit.jupiter.api.Test;

class RunWordsTest {

    private static ChartOrder chart(double high) {
        return Plot.plot("T")
                .across("x", "m", new double[] {1, 2})
                .curve("c", new double[] {0, high})
                .order();
    }

    private static View.Run words(Outcome outcome) {
        return RunWords.of(outcome, "", List.of(), Units.METRIC);
    }

    @Test
    void aChartThatCannotBeDrawnIsANoteOnThatChartAlone() {
        var trace = new Outcome.Trace("printed", 0, List.of(chart(1), chart(1e308), chart(2)), 0, 5);
        View.Run run = words(new Outcome.Done(trace, "", ""));
        assertEquals("printed", run.printed());
        assertEquals(3, run.charts().size());
        assertTrue(run.charts().get(1).says().contains("numbers too far apart to draw"));
        assertTrue(run.charts().get(1).svg().contains("too far apart"));
        assertTrue(run.charts().get(2).svg().contains("path"));
    }

    @Test
    void whatIsCutIsToldWithHowMuch() {
        var trace = new Outcome.Trace("abc", 20, List.of(chart(1)), 88, 5);
        assertEquals(
                "abc\n… the rest is not shown: 20 more characters\n… of 89 plots only the first 1 are shown",
                words(new Outcome.Done(trace, "", "")).printed());
        var charts = new Outcome.Trace("", 0, List.of(chart(1)), 2, 5);
        assertEquals(
                "… of 3 plots only the first 1 are shown",
                words(new Outcome.Done(charts, "", "")).printed());
    }

    @Test
    void anEndedRunSaysHowLongItWaited() {
        var trace = new Outcome.Trace("", 0, List.of(), 0, 35_200);
        String computed =
                words(new Outcome.Stopped(trace, Outcome.Cause.TIME, 10_100)).words();
        assertTrue(computed.contains("after 10 s of computing and 35 s by the clock"), computed);
        String waited =
                words(new Outcome.Stopped(trace, Outcome.Cause.WAIT, 200)).words();
        assertTrue(waited.contains("after 35 s by the clock, in which it computed for 0 s"), waited);
    }
}
