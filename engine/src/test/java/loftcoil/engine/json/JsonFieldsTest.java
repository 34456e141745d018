package loftcoil.engine.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class JsonFieldsTest {

    private static final Allowed FEW = new Allowed(0, 6, "");

    private static JsonFields fields(String json) {
        return JsonFields.of(new JsonText(1_000).object("", json));
    }

    private static List<String> told(JsonFields fields) {
        return fields.faults().stream()
                .map(fault -> fault.path() + ": " + fault.given())
                .toList();
    }

    @Test
    void soundFieldsGiveTheirValues() {
        JsonFields fields =
                fields("{\"a\": \"\", \"b\": \"x\", \"c\": 2.5, \"d\": 3, \"e\": true, \"f\": {\"g\": \"y\"},"
                        + " \"h\": [{\"i\": 1}, {\"i\": 2}], \"j\": [\"z\"]}");
        assertEquals("", fields.text("a"));
        assertEquals("x", fields.words("b", "w"));
        assertEquals(2.5, fields.number("c", "w"));
        assertEquals(3, fields.whole("d", FEW));
        assertEquals(true, fields.flag("e"));
        assertEquals(Map.of("g", "y"), fields.byName("f", "w", JsonFields::text));
        assertEquals(List.of(1, 2), fields.each("h", each -> each.whole("i", FEW)));
        assertEquals(List.of("z"), fields.texts("j", "w"));
        fields.done();
        assertEquals(List.of(), told(fields));
    }

    @Test
    void everyFaultIsToldAtItsPathInOneReading() {
        JsonFields fields = fields("{\"a\": 1, \"b\": \" \", \"c\": 1e999, \"d\": 7, \"e\": null, \"f\": [],"
                + " \"h\": [{\"i\": 2.5, \"k\": 1}, 4], \"j\": [\"\"]}");
        fields.text("a");
        fields.words("b", "w");
        fields.number("c", "w");
        fields.whole("d", FEW);
        fields.flag("e");
        fields.byName("f", "w", JsonFields::text);
        fields.each("h", each -> {
            int whole = each.whole("i", FEW);
            each.done();
            return whole;
        });
        fields.texts("j", "w");
        fields.object("l", "w").text("m");
        fields.done();
        assertEquals(
                List.of(
                        "a: 1",
                        "b: empty",
                        "c: \"Infinity\"",
                        "d: 7",
                        "e: missing",
                        "f: []",
                        "h[0].i: 2.5",
                        "h[0].k: \"k\"",
                        "h[1]: 4",
                        "j[0]: \"\"",
                        "l: missing"),
                told(fields));
        assertEquals(
                "d: 7; allowed: a whole number, 0 to 6", fields.faults().get(3).line());
    }

    @Test
    void notesStandInAnyObjectOfANotedReadingAlone() {
        String json = "{\"notes\": \"n\", \"a\": {\"notes\": 1}}";
        JsonFields noted = JsonFields.noted(new JsonText(1_000).object("", json));
        noted.object("a", "w").done();
        noted.done();
        assertEquals(List.of("a.notes: 1"), told(noted));
        assertEquals("n", noted.notes().get(""));
        JsonFields plain = fields(json);
        plain.ask("a");
        plain.done();
        assertEquals(List.of("notes: \"notes\""), told(plain));
    }

    @Test
    void atOnceTheFirstFaultIsThrown() {
        JsonFields fields = JsonFields.atOnce(new JsonText(1_000).object("request", "{}"));
        RefusedException refused = assertThrows(RefusedException.class, () -> fields.text("lesson"));
        assertEquals("lesson: missing; allowed: text in quotation marks", refused.getMessage());
    }

    @Test
    void whatIsNoObjectIsToldWithItsPlace() {
        JsonText reader = new JsonText(1_000);
        RefusedException refused = assertThrows(RefusedException.class, () -> reader.object("design", "{\n\"a\" 1}"));
        assertEquals(
                "design: text that is not JSON at line 2, column 5; allowed: one JSON object in { } (between a field and"
                        + " its value stands a colon)",
                refused.getMessage());
    }
}
