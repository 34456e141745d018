package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

/** Figures side by side are written with digits a person can use. */
class FigureUnitTest {

    private static Row row(String unit, double before, double after) {
        return new Row(
                "a.figure",
                FigureGroup.LOOP,
                "a figure",
                unit,
                Better.NONE,
                OptionalDouble.of(before),
                OptionalDouble.of(after));
    }

    @Test
    void whatIsNoiseIsNought() {
        Row stored = row("kWh", 7.761e-16, -3e-14);
        assertEquals("0.0", stored.shownBefore());
        assertEquals("0.0", stored.shownAfter());
        assertEquals("0.0", stored.shownDifference());
    }

    @Test
    void aDifferenceHasTheDigitsOfItsFigure() {
        assertEquals("0.0", row("°C", 55.1, 55.10427).shownDifference());
        assertEquals("+1.2", row("°C", 55.1, 56.3).shownDifference());
        assertEquals("−0.25", row("kW", 2.25, 2).shownDifference());
    }

    @Test
    void minutesBecomeHoursWhereAPersonSaysHours() {
        Row year = row("min", 20_018, 60);
        assertEquals("h", year.shownUnit());
        assertEquals("333.6", year.shownBefore());
        assertEquals("1.0", year.shownAfter());
        Row fill = row("min", 2.12, 6.34);
        assertEquals("min", fill.shownUnit());
        assertEquals("2.1", fill.shownBefore());
    }

    @Test
    void everyFigureOfAWholeSheetCanBeWritten() {
        List<Row> rows = Comparison.whole(
                        Example.orchardBothy(), Example.orchardBothy().withCoilHeatKW(1))
                .rows();
        assertFalse(rows.isEmpty());
        for (Row row : rows) {
            assertFalse(row.shownBefore().contains("e") || row.shownBefore().contains("E"), row.toString());
            assertFalse(row.shownDifference().contains("NaN"), row.toString());
        }
    }
}
