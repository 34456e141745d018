package loftcoil.engine.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Metric measures in short texts of our own. NIST Special Publication 811 (2008), appendix B.8: a temperature is turned by 1.8 and 32, the
 * difference of two by 1.8 alone.
 */
class MetricTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "15 °C apart | 27 °F apart",
                "at 15 °C | at 59 °F",
                "gets 10 °C warmer | gets 18 °F warmer",
                "20 °C below boiling | 36 °F below boiling",
                "flow, tank at 40 °C | flow, tank at 104 °F",
                "15 °C more | 27 °F more",
                "“15 °C apart” was typed | “15 °C apart” was typed"
            })
    void aDifferenceOfTemperaturesIsNoTemperature(String metric, String us) {
        assertEquals(us, Units.US.said(metric));
        assertEquals(metric, Units.METRIC.said(metric));
    }

    @Test
    void aUnitOfADifferenceHasAKindOfItsOwn() {
        MeasureKind apart = MeasureKind.ofUnit("°C apart").orElseThrow();

        assertEquals(27, Units.US.shown(apart, 15), 1e-9);
        assertEquals(59, Units.US.shown(MeasureKind.ofUnit("°C").orElseThrow(), 15), 1e-9);
    }
}
