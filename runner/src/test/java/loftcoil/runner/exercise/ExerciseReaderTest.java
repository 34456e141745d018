package loftcoil.runner.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExerciseReaderTest {

    private static final String QUANTITY =
            """
            {
              "kind": "quantity",
              "text": "Two legs are {{heightM}} m tall. How many pascals?",
              "vary": {"heightM": {"from": 1.0, "to": 3.0, "by": 0.5}},
              "reference": {"java": "88.5 * heightM", "unit": "Pa"},
              "also": [{"java": "9.03 * heightM", "unit": "kg/m3"}],
              "published": {"with": {"heightM": 1.0}, "value": 88.5, "tolerance": {"absolute": 0.3}, "source": "a table"},
              "tolerance": {"relative": 0.02},
              "source": "a table",
              "slips": ["diameter"],
              "mistakes": [{"java": "9 * heightM", "because": "no gravity", "hint": "Times gravity, at {{heightM}} m."}],
              "solution": {"text": "88.5 times {{heightM}} is {{answer}}.", "java": "heightM * 88.5"}
            }
            """;
    private static final String CHOICE =
            """
            {"kind": "choice", "when": "before", "text": "Which?", "source": "s", "solution": {"text": "t"},
             "choices": [{"text": "a", "right": true, "say": "yes"}, {"text": "b", "right": false, "say": "no"}]}
            """;
    private static final String DECISION =
            """
            {"kind": "decision", "text": "How high?", "change": "tank.baseM", "unit": "m"}
            """;

    private static Exercise read(String json) {
        return ExerciseReader.read("01-warm/legs", "exercises/01-warm/legs.json", json);
    }

    private static List<String> faults(String json) {
        return assertThrows(RefusedException.class, () -> read(json)).faults().stream()
                .map(fault -> fault.path().replaceFirst("^exercises/01-warm/legs.json(: )?", "") + ": " + fault.given())
                .toList();
    }

    @Test
    void aQuantityIsReadWhole() {
        Quantity quantity = assertInstanceOf(Quantity.class, read(QUANTITY));
        assertEquals("01-warm/legs", quantity.path());
        assertEquals(
                Map.of("heightM", new About.Span(1, 3, 0.5)), quantity.about().vary());
        assertEquals(new Reference("88.5 * heightM", "Pa"), quantity.reference());
        assertEquals(new Tolerance(0, 0.02), quantity.tolerance());
        assertEquals(88.5, quantity.published().orElseThrow().value());
        assertEquals(
                Map.of("heightM", 1.0),
                quantity.published().orElseThrow().with().values());
        assertEquals(List.of(Quantity.Slip.DIAMETER), quantity.slips());
        assertEquals("no gravity", quantity.mistakes().get(0).because());
    }

    @Test
    void theLearnersNumbersStandInTextAndJavaAlike() {
        Quantity own = assertInstanceOf(Quantity.class, read(QUANTITY).with(Numbers.of(Map.of("heightM", 2.5))));
        assertEquals("Two legs are 2.5 m tall. How many pascals?", own.text());
        assertEquals("double heightM = 2.5;\n88.5 * heightM", own.reference().java());
        assertEquals("double heightM = 2.5;\n9 * heightM", own.mistakes().get(0).java());
        assertEquals("Times gravity, at 2.5 m.", own.mistakes().get(0).hint());
        assertEquals("88.5 times 2.5 is {{answer}}.", own.about().solution().text());
        assertTrue(own.about().vary().isEmpty());
    }

    @Test
    void aDecisionMayBeATimeOfDay() {
        assertFalse(assertInstanceOf(Decision.class, read(DECISION)).clock());
        String hour = DECISION.replace("\"unit\": \"m\"", "\"unit\": \"h\", \"clock\": true");
        assertTrue(assertInstanceOf(Decision.class, read(hour)).clock());
        String height = hour.replace("\"h\"", "\"m\"");
        assertTrue(assertThrows(RefusedException.class, () -> read(height))
                .getMessage()
                .contains("clock"));
    }

    @Test
    void aToleranceMayHaveASafeSide() {
        String safe = QUANTITY.replace("{\"relative\": 0.02}", "{\"relative\": 0.02, \"safe\": \"below\"}");
        assertEquals(
                Tolerance.Safe.BELOW,
                assertInstanceOf(Quantity.class, read(safe)).tolerance().safe());
        String sideways = safe.replace("below", "sideways");
        assertTrue(assertThrows(RefusedException.class, () -> read(sideways))
                .getMessage()
                .contains("tolerance.safe"));
    }

    @Test
    void theOtherKindsAreRead() {
        Choice choice = assertInstanceOf(Choice.class, read(CHOICE));
        assertTrue(choice.before());
        assertEquals(new Choice.Option("b", false, "no", 2), choice.options().get(1));
        Decision decision = assertInstanceOf(Decision.class, read(DECISION));
        assertEquals("tank.baseM", decision.change());
        Code code = assertInstanceOf(
                Code.class,
                read(QUANTITY.replace("\"quantity\"", "\"java\"")
                        .replaceAll(" *\"(also|slips)\".*\n", "")
                        .replace("\"text\": \"Two", "\"starter\": \"1 + 1\", \"text\": \"Two")));
        assertEquals("1 + 1", code.starter());
    }

    @Test
    void allFaultsAreFoundAtOnce() {
        String json =
                """
                {"kind": "quantity", "text": "{{x}}", "vary": {"int": {"from": 3, "to": 1, "by": 0.5}}, "colour": 1,
                 "reference": {"java": "", "unit": "wibble"}, "tolerance": {"relative": -1},
                 "mistakes": [{"java": "1", "because": 7}], "when": "after"}
                """;
        assertEquals(
                List.of(
                        "vary.int: a name",
                        "vary.int.from: from 3.0 to 1.0 by 0.5",
                        "source: missing",
                        "when: “after”",
                        "solution: missing",
                        "reference.java: empty",
                        "reference.unit: “wibble”",
                        "tolerance: absolute 0.0, relative -1.0",
                        "mistakes[0].because: 7",
                        "mistakes[0].hint: missing",
                        "colour: \"colour\"",
                        "text: {{x}}"),
                faults(json));
    }

    @ParameterizedTest(name = "[{1}]")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`\"Pa\"` | `\"°C\"` | temperature: missing",
                "`\"tolerance\": {\"relative\": 0.02}` | `\"tolerance\": {}` | tolerance: neither absolute nor relative",
                "`\"tolerance\": {\"relative\": 0.02}` | `\"tolerance\": {\"absolute\": 0}` | tolerance: absolute 0.0, relative 0.0",
                "`\"tolerance\": {\"relative\": 0.02}` | `\"tolerance\": {\"relative\": 1}` | tolerance: absolute 0.0, relative 1.0",
                "`\"tolerance\": {\"relative\": 0.02}` | `\"tolerance\": {\"relative\": 1e999}` | tolerance.relative: \"Infinity\"",
                "`\"with\": {\"heightM\": 1.0}` | `\"with\": {}` | published.with.heightM: missing",
                "`{{heightM}} m tall` | `tall` | vary.heightM: not in the text",
                "`{{heightM}} m.` | `{{widthM}} m.` | mistakes[0].hint: {{widthM}}",
                "`\"kg/m3\"` | `\"kPa\"` | also: unit “kPa”",
                "`[\"diameter\"]` | `[\"sideways\"]` | slips: “sideways”",
                "`\"value\": 88.5` | `\"value\": \"88.5\"` | published.value: \"88.5\"",
                "`\"source\": \"a table\",` | `\"source\": \"a table\", \"temperature\": \"level\",` | temperature: “level” with unit “Pa”",
            })
    void oneFaultInAQuantity(String sound, String faulty, String found) {
        List<String> faults = faults(QUANTITY.replace(sound, faulty));
        assertTrue(faults.contains(found), faults::toString);
    }

    @Test
    void choicesAndDecisionsAreChecked() {
        assertEquals(1, faults(CHOICE.replace("false", "true")).size());
        assertEquals(1, faults(CHOICE.replace("\"b\"", "\"a\"")).size());
        assertEquals(List.of("choices[1].say: missing"), faults(CHOICE.replace(", \"say\": \"no\"", "")));
        assertEquals(1, faults(DECISION.replace(", \"unit\": \"m\"", "")).size());
        assertEquals(
                1,
                faults(DECISION.replace("\"m\"", "\"m\", \"options\": [\"a\"]")).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | : nothing",
                "{ | : text that is not JSON at line 1, column 2",
                "{\"kind\" | : text that is not JSON at line 1, column 8",
                "{kind: 1} | : text that is not JSON at line 1, column 2",
                "`{\"kind\": \"quantity\", \"kind\": \"choice\"}` | : text that is not JSON at line 1, column 28",
                "`{} {}` | : more than one JSON value at line 1, column 4",
                "[] | : a JSON array",
                "`{\"kind\": \"riddle\"}` | kind: “riddle”",
                "{} | kind: missing",
            })
    void whatIsNoExerciseIsRefusedWithItsPlace(String json, String start) {
        List<String> faults = faults(json);
        assertTrue(faults.get(0).startsWith(start), faults::toString);
    }

    @Test
    void aFaultIsOneLineWithFileFieldAndWhatIsAllowed() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> read(QUANTITY.replace("\"Pa\"", "\"wibble\"")));
        assertEquals(
                "exercises/01-warm/legs.json: reference.unit: “wibble”; allowed: a unit that answers can be given in,"
                        + " such as Pa, L/min, °C or W/(m K)",
                refused.getMessage());
    }

    @Test
    void hugeFilesAndDeepOnesAreRefused() {
        assertEquals(1, faults("x".repeat(ExerciseReader.LONGEST + 1)).size());
        assertEquals(1, faults("[".repeat(100_000)).size());
    }
}
