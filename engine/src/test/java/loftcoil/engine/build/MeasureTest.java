package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import org.junit.jupiter.api.Test;

/** Numbers with their units, and sentences with numbers in them. */
class MeasureTest {

    @Test
    void digitsFitWhatABuilderCanUse() {
        assertEquals("1.45 m", Measure.metres(1.449).metric());
        assertEquals("0.66 m", Measure.metres(0.66).metric());
        assertEquals("0.072 m", Measure.metres(0.072).metric());
        assertEquals("885 mm", Measure.millimetres(884.6).metric());
        assertEquals("144 kg", Measure.kilograms(143.96).metric());
        assertEquals("6.39 kg", Measure.kilograms(6.389).metric());
        assertEquals("0.92 L/min", Measure.litresPerMin(0.923).metric());
        assertEquals("−5 °C", Measure.celsius(-5.2).metric());
        assertEquals("0 °C", Measure.celsius(-0.2).metric());
        assertEquals("34°", new Measure(33.7, MeasureKind.ANGLE_DEG).metric());
        assertEquals("7", Measure.count(7).metric());
        assertEquals("1456 kWh", new Measure(1456.04, MeasureKind.ENERGY_KWH).metric());
    }

    @Test
    void whatIsNotKnownIsNoMeasure() {
        assertThrows(IllegalArgumentException.class, () -> Measure.celsius(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Measure.metres(Double.POSITIVE_INFINITY));
    }

    @Test
    void wordsKeepTheirMeasures() {
        MeasuredText inner = MeasuredText.of("at ", Measure.celsius(60));
        MeasuredText words = MeasuredText.of("**Heat** it ", inner, ".");
        assertEquals("**Heat** it at 60 °C.", words.metric());
        assertEquals("Heat it at 60 °C.", words.toString());
        assertEquals(1, words.parts().stream().filter(Measure.class::isInstance).count());
        assertThrows(IllegalArgumentException.class, () -> MeasuredText.of("x", 5));
    }

    @Test
    void aFigureHasBothEndsOrNone() {
        Measure one = Measure.watts(1);
        Measure two = Measure.watts(2);
        MeasuredText why = MeasuredText.of("why");
        assertThrows(
                IllegalArgumentException.class,
                () -> new BuildFigure("f", one, Optional.of(one), Optional.empty(), why));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BuildFigure("f", one, Optional.of(two), Optional.of(one), why));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BuildFigure("f", one, Optional.of(Measure.celsius(1)), Optional.of(two), why));
        assertEquals(one, BuildFigure.between("f", one, two, one, why).low().orElseThrow());
    }
}
