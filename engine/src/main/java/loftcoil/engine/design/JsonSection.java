package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;

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

    private static final String NOTES = "notes";

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

    double number(String name) {
        return needed(name, "a number").map(value -> asNumber(name, value)).orElse(Double.NaN);
    }

    OptionalDouble optionalNumber(String name) {
        Optional<JsonNode> value = ask(name);
        return value.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(asNumber(name, value.get()));
    }

    String text(String name) {
        return needed(name, "text").map(value -> asText(name, value)).orElse("");
    }

    Optional<String> optionalText(String name) {
        return ask(name).map(value -> asText(name, value));
    }

    boolean flag(String name) {
        return needed(name, "true or false").map(value -> asFlag(name, value)).orElse(false);
    }

    Optional<Boolean> optionalFlag(String name) {
        return ask(name).map(value -> asFlag(name, value));
    }

    /** A whole number; a placeholder of the least int where it is none. */
    int whole(String name) {
        return needed(name, "a whole number").map(value -> asWhole(name, value)).orElse(Integer.MIN_VALUE);
    }

    JsonSection object(String name) {
        Optional<JsonNode> value = needed(name, "an object in { }");
        return value.map(found -> section(name, found)).orElseGet(() -> absent(name));
    }

    Optional<JsonSection> optionalObject(String name) {
        return ask(name).map(value -> section(name, value));
    }

    List<JsonSection> objects(String name) {
        return sections(name, needed(name, "a list in [ ]"));
    }

    List<JsonSection> optionalObjects(String name) {
        return sections(name, ask(name));
    }

    List<Double> numbers(String name) {
        List<Double> numbers = new ArrayList<>();
        List<JsonNode> values = list(name, needed(name, "a list in [ ]"));
        for (int i = 0; i < values.size(); i++) {
            numbers.add(asNumber(name + "[" + i + "]", values.get(i)));
        }
        return numbers;
    }

    List<Integer> wholes(String name) {
        List<Integer> wholes = new ArrayList<>();
        List<JsonNode> values = list(name, needed(name, "a list in [ ]"));
        for (int i = 0; i < values.size(); i++) {
            wholes.add(asWhole(name + "[" + i + "]", values.get(i)));
        }
        return wholes;
    }

    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        List<JsonNode> values = list(name, needed(name, "a list in [ ]"));
        for (int i = 0; i < values.size(); i++) {
            texts.add(asText(name + "[" + i + "]", values.get(i)));
        }
        return texts;
    }

    /** An optional object of whole numbers by name, such as the fittings. */
    Map<String, Integer> counts(String name) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        ask(name).ifPresent(value -> {
            if (!value.isObject()) {
                fault(name, shown(value), "an object in { }", "");
                return;
            }
            value.properties().stream()
                    .filter(entry -> !entry.getKey().equals(NOTES))
                    .forEach(entry ->
                            counts.put(entry.getKey(), asWhole(name + "." + entry.getKey(), entry.getValue())));
        });
        return counts;
    }

    /** Notes the text in {@code notes} and every field that nobody asked for. */
    void done() {
        if (!there) {
            return;
        }
        ask(NOTES).ifPresent(value -> {
            String text = asText(NOTES, value);
            findings.notes.put(path, text);
        });
        node.fieldNames().forEachRemaining(name -> {
            if (!asked.contains(name)) {
                findings.faults.add(new KnownNames("field", List.copyOf(asked)).unknown(at(name), name));
            }
        });
    }

    private Optional<JsonNode> ask(String name) {
        asked.add(name);
        return Optional.ofNullable(node.get(name)).filter(value -> !value.isNull());
    }

    private Optional<JsonNode> needed(String name, String kind) {
        Optional<JsonNode> value = ask(name);
        if (value.isEmpty()) {
            fault(name, "missing", kind, "");
        }
        return value;
    }

    private JsonSection section(String name, JsonNode value) {
        if (value.isObject()) {
            return new JsonSection(value, at(name), findings, there);
        }
        fault(name, shown(value), "an object in { }", "");
        return absent(name);
    }

    /** Stands in for an object that is not there; says nothing about the fields it does not have. */
    private JsonSection absent(String name) {
        return new JsonSection(JsonNodeFactory.instance.objectNode(), at(name), findings, false);
    }

    private List<JsonSection> sections(String name, Optional<JsonNode> value) {
        List<JsonSection> sections = new ArrayList<>();
        List<JsonNode> values = list(name, value);
        for (int i = 0; i < values.size(); i++) {
            sections.add(section(name + "[" + i + "]", values.get(i)));
        }
        return sections;
    }

    private List<JsonNode> list(String name, Optional<JsonNode> value) {
        List<JsonNode> values = new ArrayList<>();
        value.ifPresent(found -> {
            if (found.isArray()) {
                found.forEach(values::add);
            } else {
                fault(name, shown(found), "a list in [ ]", "");
            }
        });
        return values;
    }

    private double asNumber(String name, JsonNode value) {
        if (value.isNumber()) {
            return value.doubleValue();
        }
        fault(name, shown(value), "a number", "");
        return Double.NaN;
    }

    private int asWhole(String name, JsonNode value) {
        if (value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue()) && value.canConvertToInt()) {
            return value.intValue();
        }
        fault(name, shown(value), "a whole number", "");
        return Integer.MIN_VALUE;
    }

    private String asText(String name, JsonNode value) {
        if (value.isTextual()) {
            return value.textValue();
        }
        fault(name, shown(value), "text in quotation marks", "");
        return "";
    }

    private boolean asFlag(String name, JsonNode value) {
        if (value.isBoolean()) {
            return value.booleanValue();
        }
        fault(name, shown(value), "true or false", "");
        return false;
    }

    private void fault(String name, String given, String allowed, String why) {
        if (there) {
            findings.faults.add(new Fault(at(name), given, allowed, why));
        }
    }

    private String at(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() > 40 ? text.substring(0, 37) + "..." : text;
    }
}
