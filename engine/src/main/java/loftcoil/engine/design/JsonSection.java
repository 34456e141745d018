package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.PlainText;

/**
 * One JSON object being read. Every field is asked for by name; what is missing or of the wrong kind is noted as a fault
 * with its path, and a placeholder (NaN, empty) stands in so that reading goes on to find the next fault. {@link #done}
 * notes every field nobody asked for.
 */
final class JsonSection {

    /** What all sections of one reading share. */
    static final class Findings {
        final List<Fault> faults = new ArrayList<>();
        final Map<String, String> notes = new TreeMap<>();
    }

    static final String NOTES = "notes";
    static final String OBJECT = "an object in { }";
    static final String LIST = "a list in [ ]";

    private final JsonNode node;
    private final String path;
    private final Findings findings;
    private final boolean there;
    private final Set<String> asked = new LinkedHashSet<>();

    private JsonSection(JsonNode node, String path, Findings findings, boolean there) {
        this.node = node;
        this.path = path;
        this.findings = findings;
        this.there = there;
        asked.add(NOTES);
    }

    static JsonSection root(JsonNode node, Findings findings) {
        return new JsonSection(node, "", findings, true);
    }

    JsonSection object(String name) {
        return needed(name, OBJECT).map(found -> section(name, found)).orElseGet(() -> absent(name));
    }

    /** Notes the text in {@code notes} and every field that nobody asked for. */
    void done() {
        if (!there) {
            return;
        }
        ask(NOTES).ifPresent(value -> findings.notes.put(path, asText(NOTES, value)));
        node.fieldNames().forEachRemaining(name -> {
            if (!asked.contains(name)) {
                findings.faults.add(new KnownNames("field", List.copyOf(asked)).unknown(at(name), name));
            }
        });
    }

    /** The field of that name where it stands and is not null. */
    Optional<JsonNode> ask(String name) {
        asked.add(name);
        return Optional.ofNullable(node.get(name)).filter(value -> !value.isNull());
    }

    /** The field of that name; noted where it is missing. */
    Optional<JsonNode> needed(String name, String kind) {
        Optional<JsonNode> value = ask(name);
        if (value.isEmpty()) {
            fault(name, "missing", kind);
        }
        return value;
    }

    /** An object, or one of a list; noted where it is none. */
    JsonSection section(String name, JsonNode value) {
        if (value.isObject()) {
            return new JsonSection(value, at(name), findings, there);
        }
        fault(name, shown(value), OBJECT);
        return absent(name);
    }

    /** Stands in for an object that is not there; says nothing about the fields it does not have. */
    private JsonSection absent(String name) {
        return new JsonSection(JsonNodeFactory.instance.objectNode(), at(name), findings, false);
    }

    /** The items of a list; noted where it is none. */
    List<JsonNode> items(String name, JsonNode value) {
        List<JsonNode> values = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(values::add);
        } else {
            fault(name, shown(value), LIST);
        }
        return values;
    }

    double asNumber(String name, JsonNode value) {
        if (value.isNumber()) {
            return value.doubleValue();
        }
        fault(name, shown(value), "a number");
        return Double.NaN;
    }

    /** A whole number; a placeholder of the least int where it is none. */
    int asWhole(String name, JsonNode value) {
        if (value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue()) && value.canConvertToInt()) {
            return value.intValue();
        }
        fault(name, shown(value), "a whole number");
        return Integer.MIN_VALUE;
    }

    String asText(String name, JsonNode value) {
        if (value.isTextual()) {
            return value.textValue();
        }
        fault(name, shown(value), "text in quotation marks");
        return "";
    }

    boolean asFlag(String name, JsonNode value) {
        if (value.isBoolean()) {
            return value.booleanValue();
        }
        fault(name, shown(value), "true or false");
        return false;
    }

    void fault(String name, String given, String allowed) {
        fault(new Fault(at(name), given, allowed, ""));
    }

    void fault(Fault fault) {
        if (there) {
            findings.faults.add(fault);
        }
    }

    /** The path of a field. */
    String at(String name) {
        return Form.at(path, PlainText.cut(name));
    }

    static String shown(JsonNode value) {
        String text = PlainText.cut(value.toString());
        return text.length() > 40 ? text.substring(0, 37) + "..." : text;
    }
}
