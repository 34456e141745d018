package loftcoil.engine.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.fault.RefusedException;

/**
 * One JSON object being read. Every field is asked for by name; what is missing or of the wrong kind is noted as a fault
 * with its path, and a placeholder (NaN, empty, false, the least int) stands in so that reading goes on to find the next
 * fault. {@link #done} notes every field nobody asked for. A field that is {@code null} counts as missing.
 */
public final class JsonFields {

    /** The name of the text that any object of a noted reading may carry. */
    public static final String NOTES = "notes";

    /** What is wanted where an object is. */
    public static final String OBJECT = "an object in { }";

    /** What is wanted where a list is. */
    public static final String LIST = "a list in [ ]";

    /** What is wanted where a text is. */
    public static final String TEXT = "text in quotation marks";

    private static final String FLAG = "true or false";

    private final JsonNode node;
    private final String path;
    private final Reading reading;
    private final boolean there;
    private final Set<String> asked = new LinkedHashSet<>();

    /** What all objects of one reading share. */
    private record Reading(List<Fault> faults, Map<String, String> notes, boolean noted, boolean atOnce) {

        void add(Fault fault) {
            if (atOnce) {
                throw new RefusedException(List.of(fault));
            }
            faults.add(fault);
        }
    }

    private JsonFields(JsonNode node, String path, Reading reading, boolean there) {
        this.node = node;
        this.path = path;
        this.reading = reading;
        this.there = there;
        if (reading.noted()) {
            asked.add(NOTES);
        }
    }

    private static JsonFields root(JsonNode object, boolean noted, boolean atOnce) {
        return new JsonFields(object, "", new Reading(new ArrayList<>(), new TreeMap<>(), noted, atOnce), true);
    }

    /**
     * The fields of an object, all faults collected.
     *
     * @param object a JSON object
     */
    public static JsonFields of(JsonNode object) {
        return root(object, false, false);
    }

    /**
     * The same where any object may carry a text {@link #NOTES}.
     *
     * @param object a JSON object
     */
    public static JsonFields noted(JsonNode object) {
        return root(object, true, false);
    }

    /**
     * The fields of an object, the first fault of which is thrown as a {@link RefusedException}.
     *
     * @param object a JSON object
     */
    public static JsonFields atOnce(JsonNode object) {
        return root(object, false, true);
    }

    /** All faults found in the whole reading so far, in the order they were met. */
    public List<Fault> faults() {
        return List.copyOf(reading.faults());
    }

    /** The notes found so far, by path of their object. */
    public Map<String, String> notes() {
        return new TreeMap<>(reading.notes());
    }

    /** Notes the text in {@link #NOTES} and every field that nobody asked for. */
    public void done() {
        if (!there) {
            return;
        }
        if (reading.noted()) {
            ask(NOTES).ifPresent(value -> reading.notes().put(path, text(NOTES, value)));
        }
        node.fieldNames().forEachRemaining(name -> {
            if (!asked.contains(name)) {
                reading.add(new KnownNames("field", List.copyOf(asked)).unknown(at(name), name));
            }
        });
    }

    /** The object as it stands there; an empty one where it is none. */
    public String json() {
        return node.toString();
    }

    /** Whether a field of that name stands there. */
    public boolean has(String name) {
        return ask(name).isPresent();
    }

    /** The field of that name where it stands and is not null. */
    public Optional<JsonNode> ask(String name) {
        asked.add(name);
        return Optional.ofNullable(node.get(name)).filter(value -> !value.isNull());
    }

    /** The field of that name; noted where it is missing. */
    public Optional<JsonNode> needed(String name, String wanted) {
        Optional<JsonNode> value = ask(name);
        if (value.isEmpty()) {
            fault(name, "missing", wanted);
        }
        return value;
    }

    /** The names of all fields but the notes; each of them then counts as asked for. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        if (reading.noted()) {
            names.remove(NOTES);
        }
        asked.addAll(names);
        return names;
    }

    /** The object of that name; noted where it is missing or none. */
    public JsonFields object(String name, String wanted) {
        return needed(name, wanted).map(found -> section(name, found)).orElseGet(() -> absent(name));
    }

    /** An object, or one of a list; noted where it is none. */
    public JsonFields section(String name, JsonNode value) {
        if (value.isObject()) {
            return new JsonFields(value, at(name), reading, there);
        }
        fault(name, shown(value), OBJECT);
        return absent(name);
    }

    /** Stands in for an object that is not there; says nothing about the fields it does not have. */
    private JsonFields absent(String name) {
        return new JsonFields(JsonNodeFactory.instance.objectNode(), at(name), reading, false);
    }

    /**
     * What stands under each name of an object, in the order of the file.
     *
     * @param read takes the value of a name from the object
     */
    public <T> Map<String, T> byName(String name, String wanted, BiFunction<JsonFields, String, T> read) {
        JsonFields object = object(name, wanted);
        Map<String, T> values = new LinkedHashMap<>();
        object.names().forEach(key -> values.put(key, read.apply(object, key)));
        return values;
    }

    /** The items of a list; noted where it is none. */
    public List<JsonNode> items(String name, JsonNode value) {
        List<JsonNode> values = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(values::add);
        } else {
            fault(name, shown(value), LIST);
        }
        return values;
    }

    /** Each member of a list of objects; none where there is no list. */
    public <T> List<T> each(String name, Function<JsonFields, T> read) {
        List<T> found = new ArrayList<>();
        List<JsonNode> items = ask(name).map(list -> items(name, list)).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            found.add(read.apply(section(item(name, i), items.get(i))));
        }
        return found;
    }

    /** Each member of a list of texts, none of them blank; none where there is no list. */
    public List<String> texts(String name, String wanted) {
        List<String> found = new ArrayList<>();
        List<JsonNode> items = ask(name).map(list -> items(name, list)).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).isTextual() && !items.get(i).textValue().isBlank()) {
                found.add(items.get(i).textValue());
            } else {
                fault(item(name, i), shown(items.get(i)), wanted);
            }
        }
        return found;
    }

    /** A number, which may be infinite; noted where it is none. */
    public double number(String name, JsonNode value) {
        if (value.isNumber()) {
            return value.doubleValue();
        }
        fault(name, shown(value), "a number");
        return Double.NaN;
    }

    /** A finite number that must be there. */
    public double number(String name, String wanted) {
        Optional<JsonNode> value = needed(name, wanted);
        if (value.isPresent()
                && value.get().isNumber()
                && Double.isFinite(value.get().doubleValue())) {
            return value.get().doubleValue();
        }
        value.ifPresent(wrong -> fault(name, shown(wrong), wanted));
        return Double.NaN;
    }

    /** A whole number; the least int where it is none. */
    public int whole(String name, JsonNode value) {
        return whole(name, value, "a whole number");
    }

    private int whole(String name, JsonNode value, String wanted) {
        if (value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue()) && value.canConvertToInt()) {
            return value.intValue();
        }
        fault(name, shown(value), wanted);
        return Integer.MIN_VALUE;
    }

    /** A whole number in a range, which must be there; the least int where it is none. */
    public int whole(String name, Allowed range) {
        String wanted = "a whole number, " + range;
        int number =
                needed(name, wanted).map(value -> whole(name, value, wanted)).orElse(Integer.MIN_VALUE);
        if (number != Integer.MIN_VALUE && !(number >= range.low() && number <= range.high())) {
            fault(name, Integer.toString(number), wanted);
        }
        return number;
    }

    /** A text; noted where it is none. */
    public String text(String name, JsonNode value) {
        return text(name, value, TEXT);
    }

    private String text(String name, JsonNode value, String wanted) {
        if (value.isTextual()) {
            return value.textValue();
        }
        fault(name, shown(value), wanted);
        return "";
    }

    /** A text that must be there, if only an empty one. */
    public String text(String name) {
        return needed(name, TEXT).map(value -> text(name, value)).orElse("");
    }

    /** A text that must be there and not blank. */
    public String words(String name, String wanted) {
        Optional<JsonNode> value = needed(name, wanted);
        String text = value.map(found -> text(name, found, wanted)).orElse("");
        if (text.isBlank() && value.filter(JsonNode::isTextual).isPresent()) {
            fault(name, "empty", wanted);
        }
        return text;
    }

    /** A text, or an empty one where there is none. */
    public String wordsIfSaid(String name, String wanted) {
        return ask(name).map(value -> text(name, value, wanted)).orElse("");
    }

    /** True or false; noted where it is neither. */
    public boolean flag(String name, JsonNode value) {
        if (value.isBoolean()) {
            return value.booleanValue();
        }
        fault(name, shown(value), FLAG);
        return false;
    }

    /** True or false, which must be there. */
    public boolean flag(String name) {
        return needed(name, FLAG).map(value -> flag(name, value)).orElse(false);
    }

    /** Notes what is wrong with a field. */
    public void fault(String name, String given, String allowed) {
        fault(new Fault(at(name), given, allowed, ""));
    }

    /** Notes a fault, unless this object is not there at all. */
    public void fault(Fault fault) {
        if (there) {
            reading.add(fault);
        }
    }

    /** The path of a field. */
    public String at(String name) {
        String plain = PlainText.cut(name);
        return path.isEmpty() ? plain : path + "." + plain;
    }

    private static String item(String name, int index) {
        return name + "[" + index + "]";
    }

    private static String shown(JsonNode value) {
        return PlainText.cut(value.toString());
    }
}
