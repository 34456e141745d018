package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import loftcoil.engine.words.Units;
import loftcoil.runner.check.Checker;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.Reference;
import loftcoil.runner.exercise.Tolerance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplyWordsTest {

    private static final Reckoning NUMBERS = Double::parseDouble;

    private static Quantity asked(String value, String unit, Quantity.Temperature temperature) {
        return new Quantity(
                new About("01-a/b", "?", false, new TreeMap<>(), "s", new About.Solution("It is so.", value)),
                new Reference(value, unit),
                List.of(),
                Optional.empty(),
                temperature,
                new Tolerance(0.2, 0),
                List.of(),
                List.of());
    }

    /** A degree Fahrenheit is five ninths of a degree Celsius: NIST Special Publication 811 (2008), appendix B.8. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "40 | °C | LEVEL      | 46 °C | Not yet: 11 °F too high.",
                "60 | °C | LEVEL      | 104 °F | Not yet: 36 °F too low.",
                "20 | °C | DIFFERENCE | 36 °F | 'Right: it comes to 20 °C, which is 36.0 °F.'"
            })
    void degreesAreTheReadersOwn(
            String value, String unit, Quantity.Temperature temperature, String answer, String words) {
        Quantity quantity = asked(value, unit, temperature);

        assertEquals(
                words,
                new ReplyWords(NUMBERS, () -> Units.US).words(quantity, Checker.check(quantity, answer, NUMBERS)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "40  | °C | LEVEL      | 46 °C   | Not yet: 6 °C too high.",
                "40  | °C | LEVEL      | 95 °F   | Not yet: 5 °C too low.",
                "-8  | °C | LEVEL      | -5 °C   | Not yet: 3 °C too high.",
                "0   | °C | LEVEL      | 4 °C    | Not yet: 4 °C too high.",
                "20  | K  | DIFFERENCE | 10 K    | Not yet: 50 % too low.",
                "2   | kW | NONE       | 3 kW    | Not yet: 50 % too high."
            })
    void aTemperatureIsOffByDegreesAndAnythingElseByAShare(
            String value, String unit, Quantity.Temperature temperature, String answer, String words) {
        Quantity quantity = asked(value, unit, temperature);

        assertEquals(
                words,
                new ReplyWords(NUMBERS, () -> Units.METRIC).words(quantity, Checker.check(quantity, answer, NUMBERS)));
    }
}
