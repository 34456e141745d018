package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;

/** Figures side by side are written with digits a person can use. */
class RowTest {

    private static final Sheet WHOLE = Sheet.whole(Example.orchardBothy(), Sheet.USUAL_TANK_C);

    private static Row row(String key, double before, double after) {
        SheetFigure figure = Figures.of(WHOLE).stream()
                .filter(known -> known.key().equals(key))
                .findFirst()
                .orElseThrow();
        return Row.of(figure, OptionalDouble.of(before), OptionalDouble.of(after));
    }

    @Test
    void whatIsNoiseIsNought() {
        Row stored = row("year.storedKWh", 7.761e-16, -3e-14);
        assertEquals("0.0", stored.shownBefore(Units.METRIC));
        assertEquals("0.0", stored.shownAfter(Units.METRIC));
        assertEquals("0.0", stored.shownDifference(Units.METRIC));
    }

    @Test
    void aDifferenceHasTheDigitsOfItsFigure() {
        assertEquals("0.0", row("loop.coilOutC", 55.1, 55.10427).shownDifference(Units.METRIC));
        assertEquals("+1.2", row("loop.coilOutC", 55.1, 56.3).shownDifference(Units.METRIC));
        assertEquals("−0.25", row("loop.heatKW", 2.25, 2).shownDifference(Units.METRIC));
    }

    @Test
    void minutesBecomeHoursWhereAPersonSaysHours() {
        Row slow = row("taps[kitchen sink].fillMin60L", 180, 60);
        assertEquals("h", slow.shownUnit(Units.METRIC));
        assertEquals("3.0", slow.shownBefore(Units.METRIC));
        assertEquals("1.0", slow.shownAfter(Units.METRIC));
        Row fill = row("taps[kitchen sink].fillMin60L", 2.12, 6.34);
        assertEquals("min", fill.shownUnit(Units.METRIC));
        assertEquals("2.1", fill.shownBefore(Units.METRIC));
    }

    @Test
    void aShareIsWrittenInPercentAndKeptAsAShare() {
        Row light = row("window.transmittanceNormal", 0.75, 0.5);
        assertEquals("%", light.shownUnit(Units.METRIC));
        assertEquals("75", light.shownBefore(Units.METRIC));
        assertEquals("−25", light.shownDifference(Units.METRIC));
        assertEquals("", light.unit());
    }
}
