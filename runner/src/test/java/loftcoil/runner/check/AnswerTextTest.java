package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loftcoil.runner.unit.WrittenUnit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswerTextTest {

    @Test
    void aReplyRepeatsNoControlCharacter() {
        for (String typed : new String[] {"plenty\u0000Pa", "6 fl\u001B[31moo", "\u202Eplenty", "6 x\u0007y"}) {
            AnswerText.NotRead said = assertInstanceOf(AnswerText.NotRead.class, AnswerText.read(typed));
            assertTrue(said.words().matches("[^\\p{Cc}\\u202A-\\u202E]*"), said::words);
        }
    }

    @ParameterizedTest(name = "[{0}]")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "6.2 | 6.2 | -",
                "6,2 Pa | 6.2 | Pa",
                "5’ 6” | 5.5 | ft",
                "5’6” | 5.5 | ft",
                "2.08419 pounds per square inch | 2.08419 | psi",
                "12 per cent | 12 | %",
                "3 kilowatt-hours | 3 | kWh",
                "1.2 gal/min | 1.2 | US gal/min",
                "1 200 Pa | 1200 | Pa",
                "1\u00A0200 Pa | 1200 | Pa",
                "1\u202F200,5 Pa | 1200.5 | Pa",
                "1'200 Pa | 1200 | Pa",
                "1,234.5 Pa | 1234.5 | Pa",
                "1.234,5 Pa | 1234.5 | Pa",
                "1,234,567 | 1234567 | -",
                "1.2e-3 kg/s | 0.0012 | kg/s",
                "1.2E-3kg/s | 0.0012 | kg/s",
                "1.2 x 10^-3 kg/s | 0.0012 | kg/s",
                "1,2·10⁻³ kg/s | 0.0012 | kg/s",
                "62 mm H2O | 62 | mmH₂O",
                "75 °C | 75 | °C",
                "75°C | 75 | °C",
                "167 F | 167 | °F",
                "75 deg C | 75 | °C",
                "0.5 kPa/m | 0.5 | kPa/m",
                "½ | 0.5 | -",
                "1½ in | 1.5 | in",
                "7 ft 4 | 7.33333333333333 | ft",
                "1 ft 11 5/8 | 1.96875 | ft",
                "1' 11 | 1.91666666666667 | ft",
                "two | 2 | -",
                "Twelve hours | 12 | h",
                "four hundred feet | 400 | ft",
                "a hundred and twenty | 120 | -",
                "two thousand five hundred litres | 2500 | L",
                "twenty-five kilos | 25 | kg",
                "a dozen | 12 | -",
                "half a dozen | 6 | -",
                "a couple | 2 | -",
                "both | 2 | -",
                "a foot | 1 | ft",
                "a foot and a half | 1.5 | ft",
                "an inch and three quarters | 1.75 | in",
                "3 feet and a half | 3.5 | ft",
                "two and a half hours | 2.5 | h",
                "two and one half hours | 2.5 | h",
                "6 and a half feet | 6.5 | ft",
                "18 and three quarters inches | 18.75 | in",
                "half an inch | 0.5 | in",
                "half inch | 0.5 | in",
                "three quarters of an inch | 0.75 | in",
                "three-quarter inch | 0.75 | in",
                "3/4 of an inch | 0.75 | in",
                "five eighths of an inch | 0.625 | in",
                "six foot four | 6.33333333333333 | ft",
                "six foot four and a half | 6.375 | ft",
                "two feet and three inches | 2.25 | ft",
                "an hour and twenty minutes | 1.33333333333333 | h",
                "seven feet above the floor | 7 | ft",
                "18 inches or so | 18 | in",
                "one in forty | 0.025 | ",
                "just under 4 m | 4 | m",
                "1 ½ in | 1.5 | in",
                "3/4 in | 0.75 | in",
                "1 1/4\" | 1.25 | in",
                "1-1/4 inch | 1.25 | in",
                "−5 °C | -5 | °C",
                "- 5 Pa | -5 | Pa",
                "+5 Pa | 5 | Pa",
                "6.2. | 6.2 | -",
                "6.2 Pa. | 6.2 | Pa",
                "6 in. | 6 | in",
                "about 6 Pa | 6 | Pa",
                "approx. 6 Pa! | 6 | Pa",
                "~6 Pa | 6 | Pa",
                "dp = 6 Pa | 6 | Pa",
                "= 6 | 6 | -",
                ".5 L | 0.5 | L",
                ",5 L | 0.5 | L",
                "5. | 5 | -",
                "0,125 m | 0.125 | m",
                "6 ft 4 in | 6.33333333333333 | ft",
                "6'4\" | 6.33333333333333 | ft",
                "1 h 20 min | 1.33333333333333 | h",
                "12 % | 12 | %",
                "1.200 | 1.2 | -",
                "0 | 0 | -",
                "3 litres of water | 3 | L",
                "3 kg of dry wood | 3 | kg",
                "3 US quarts | 3 | US qt",
                "2 imperial pints | 2 | UK pt",
                "3 stacked cubic metres | 3 | m³",
                "12 drops a minute | 12 | drops/min",
                "20 mm a metre | 20 | mm/m",
                "5 litres a minute | 5 | L/min",
                "1 in 50 | 0.02 | ",
                "1:50 | 0.02 | ",
                "1 : 50 | 0.02 | ",
                "one in 40 | 0.025 | ",
                "1 tsp | 1 | tsp",
                "2 teaspoons | 2 | tsp",
                "3 tablespoons | 3 | tbsp",
                "1.5 weeks | 1.5 | week",
                "1 week 2 days | 1.28571428571429 | week",
                "2 months | 2 | month",
                "5 years | 5 | year",
                "0.5 therm | 0.5 | therm",
                "1 cord | 1 | cord",
                "3 metres of water | 3 | mH₂O",
                "40 millimetres of water | 40 | mmH₂O",
                "60 degrees centigrade | 60 | °C",
                "3 watts per degree | 3 | W/K",
                "12 cc | 12 | mL",
                "2 dm³ | 2 | dm³",
                "3 pints | 3 | US pt",
                "3 gals | 3 | US gal",
                "3 U.S. gallons | 3 | US gal",
                "3 kgs | 3 | kg",
                "3 kgf | 3 | kgf",
                "0.1*0.028*998/0.001 | 2794.4 | -",
                "0.1*0.028*998/0.001 = 2794 | 2794 | -",
                "0.1 × 0.028 × 998 ÷ 0.001 = 2794 Pa | 2794 | Pa",
                "(20 + 4) * 2.5 L | 60 | L",
                "2 x 3 m | 6 | m",
                "3,5 * 2 | 7 | -",
                "10 * 2^3 | 80 | -",
                "2 * 3² | 18 | -",
                "2^3^2 | 512 | -",
                "-2^2 + 5*1 | 1 | -",
                "pi * 2² / 4 | 3.14159265358979 | -",
                "3 + 4 m | 7 | m",
                "120 / 70 * 25 = 42.9 L | 42.9 | L",
                "1/2 * 3 | 1.5 | -",
                "10 - 4 = 6 L | 6 | L",
                "6*7 = | 42 | -",
                "p = 6*7 Pa | 42 | Pa",
                "about 6*7 | 42 | -",
            })
    void readsWhatPeopleType(String typed, double value, String unit) {
        AnswerText.Amount amount = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(typed));
        assertEquals(value, amount.value(), Math.abs(value) * 1e-12);
        assertEquals(
                unit == null ? "" : unit, amount.unit().map(WrittenUnit::shown).orElse("-"));
    }

    @ParameterizedTest(name = "[{0}]")
    @CsvSource({
        "23, 1",
        "2.3, 0.1",
        "2.30, 0.01",
        "290, 10",
        "300, 10",
        "1000, 100",
        "1040, 10",
        "20, 1",
        "7, 1",
        "0.05, 0.01",
        "1.2e3, 100",
        "5e3, 1000",
        "3/16, 0.0625",
        "1 1/4, 0.25",
        "½, 0.5",
        "2¾, 0.25",
        "⅜, 0.125",
        "⅔, 0.333333333333",
        "3 ft 4 in, 0.083333333333",
        "2*3, 0",
        "2*3 = 6, 1",
        "0, 1",
        "007, 1",
        "1 in 50, 0.0004"
    })
    void theLastDigitSaysHowFarItMayBeRounded(String typed, double step) {
        AnswerText.Amount amount = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(typed));
        assertEquals(step, amount.step(), 1e-9 * (1 + step));
    }

    @ParameterizedTest(name = "[{0}]")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | Type a number",
                "`   ` | Type a number",
                "1,200 | can mean 1200 or 1.2",
                "12,500 Pa | can mean 12500 or 12.5",
                "5-6 Pa | range",
                "5–6 Pa | range",
                "5 to 6 Pa | range",
                "5 Pa to 6 Pa | range",
                "5..6 | range",
                "between 5 and 6 | range",
                "5 ± 1 Pa | range",
                "1.2.3 | not one number",
                "1,23,4 | not one number",
                "lots | does not begin with a number",
                "Pa 6 | does not begin with a number",
                "NaN | does not begin with a number",
                "∞ | does not begin with a number",
                "6 wibble | “wibble” is no unit",
                "75 degrees | “degrees” is no unit",
                "5 6 | more than one number",
                "5 Pa 6 m | more than one number",
                "20 °C 5 °C | more than one number",
                "3/0 in | cannot have 0",
                "1e999 | too large",
                "3 litres of | is no unit",
                "3 of water | is no unit",
                "2*3 = 7 | comes to 6, not to 7",
                "2*3/0 | divides by 0",
                "2*(3 | cannot be read to its end",
                "2*3*x | cannot be read from “x” on",
                "(2+3 | cannot be read to its end",
                "2**3 | is no unit",
                "6 wibble/(m K) | is no unit",
                "2*wibble | is no unit",
                "2*3 wibble | cannot be read from “wibble” on",
                "2*3 = 6 wibble | cannot be read from",
                "1 in 0 | more than one number",
                "1 in -5 | range",
                "1 in 50 m | more than one number",
                "1:2:3 | is no unit",
                "5 - 6 | range",
                "3 m * 2 m | more than one number",
            })
    void saysWhyNotAndWhatWouldDo(String typed, String words) {
        AnswerText.NotRead not = assertInstanceOf(AnswerText.NotRead.class, AnswerText.read(typed));
        assertTrue(not.words().contains(words), not::words);
    }

    @Property(tries = 5000)
    void neverThrowsAndNeverGivesWhatIsNoNumber(@ForAll("typed") String typed) {
        AnswerText answer = AnswerText.read(typed);
        if (answer instanceof AnswerText.Amount amount) {
            assertTrue(Double.isFinite(amount.value()), typed);
        } else {
            assertTrue(!((AnswerText.NotRead) answer).words().isBlank(), typed);
        }
    }

    @Provide
    Arbitrary<String> typed() {
        Arbitrary<String> pieces = Arbitraries.of(
                "1",
                "20",
                "300",
                ".",
                ",",
                " ",
                "-",
                "−",
                "/",
                "e",
                "E-3",
                "x10^",
                "⁻³",
                "½",
                "Pa",
                "m",
                "³",
                "^2",
                "L/min",
                "°C",
                "(",
                ")",
                "'",
                "\"",
                "to",
                "about",
                "=",
                "%",
                "H2O",
                "per",
                "ft",
                "in",
                "NaN",
                "9999999999999999");
        return Arbitraries.oneOf(
                pieces.list().ofMaxSize(8).map(parts -> String.join("", parts)),
                Arbitraries.strings().ofMaxLength(30));
    }

    @Property
    void whatJavaPrintsIsReadBackToTheLastDigit(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        AnswerText.Amount amount = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(value + " Pa"));
        assertEquals(value, amount.value(), 0);
    }

    @Property
    void pointAndCommaMeanTheSame(@ForAll @IntRange(max = 99_999) int whole, @ForAll @IntRange(max = 99) int part) {
        String point = String.format(Locale.ROOT, "%d.%02d", whole, part);
        AnswerText.Amount one = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(point));
        AnswerText.Amount other = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(point.replace('.', ',')));
        assertEquals(whole + part / 100.0, one.value(), 1e-9);
        assertEquals(one.value(), other.value(), 0);
    }

    @Property
    void groupsOfThousandsChangeNothing(@ForAll @IntRange(min = 1000) int value) {
        String spaced = String.format(Locale.ROOT, "%,d", value).replace(',', ' ');
        AnswerText.Amount amount = assertInstanceOf(AnswerText.Amount.class, AnswerText.read(spaced + " L"));
        assertEquals(value, amount.value(), 0);
    }

    @Test
    void twoHundredSignsAreReadAndOneMoreIsTooMany() {
        String longest = "5 Pa" + " ".repeat(AnswerText.LONGEST - 4);
        assertInstanceOf(AnswerText.Amount.class, AnswerText.read(longest));
        assertTrue(assertInstanceOf(AnswerText.NotRead.class, AnswerText.read(longest + " "))
                .words()
                .contains("too long"));
    }
}
