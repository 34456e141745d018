package loftcoil.runner.exercise;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** The fields of one JSON object, taken out one by one; what is wrong or left over becomes a fault. */
final class Fields {

    private final String file;
    private final String path;
    private final JsonNode object;
    private final List<ExerciseFault> faults;
    private final Set<String> known = new LinkedHashSet<>();

    Fields(String file, String path, JsonNode object, List<ExerciseFault> faults) {
        this.file = file;
        this.path = path;
        this.object = object;
        this.faults = faults;
        if (!object.isObject()) {
            faults.add(
                    new ExerciseFault(file, path.isEmpty() ? "the file" : path, shown(object), "an object, in braces"));
        }
    }

    boolean has(String name) {
        known.add(name);
        return object.has(name);
    }

    String file() {
        return file;
    }

    void fault(String name, String what, String allowed) {
        faults.add(new ExerciseFault(file, place(name), what, allowed));
    }

    /** A text that must be there and not blank. */
    String text(String name, String allowed) {
        String text = optionalText(name, allowed);
        if (!object.has(name)) {
            fault(name, "missing", allowed);
        } else if (object.get(name).isTextual() && text.isBlank()) {
            fault(name, "empty", allowed);
        }
        return text;
    }

    /** A text, or an empty one where there is none. */
    String optionalText(String name, String allowed) {
        if (!has(name)) {
            return "";
        }
        JsonNode value = object.get(name);
        if (!value.isTextual()) {
            fault(name, shown(value), allowed);
            return "";
        }
        return value.textValue();
    }

    /** A finite number that must be there; 0 where it is faulty. */
    double number(String name, String allowed) {
        if (!has(name)) {
            fault(name, "missing", allowed);
            return 0;
        }
        JsonNode value = object.get(name);
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            fault(name, shown(value), allowed);
            return 0;
        }
        return value.doubleValue();
    }

    /** The JSON of an object of that name; that of an empty one where there is none. */
    String object(String name) {
        if (!has(name)) {
            return "{}";
        }
        JsonNode value = object.get(name);
        if (!value.isObject()) {
            fault(name, shown(value), "an object, in braces");
            return "{}";
        }
        return value.toString();
    }

    /** True where nothing was found wrong in the file so far. */
    boolean sound() {
        return faults.isEmpty();
    }

    boolean yesOrNo(String name) {
        if (!has(name) || !object.get(name).isBoolean()) {
            fault(name, has(name) ? shown(object.get(name)) : "missing", "true or false");
            return false;
        }
        return object.get(name).booleanValue();
    }

    /** The object of that name; where it is missing, an empty one and a fault. */
    Fields inner(String name, String allowed) {
        if (!has(name)) {
            fault(name, "missing", allowed);
            return new Fields(file, place(name), JsonNodeFactory.instance.objectNode(), new ArrayList<>());
        }
        return new Fields(file, place(name), object.get(name), faults);
    }

    /** Each member of a list of objects; none where there is no list. */
    <T> List<T> each(String name, Function<Fields, T> read) {
        List<T> found = new ArrayList<>();
        elements(name, (at, element) -> found.add(read.apply(new Fields(file, at, element, faults))));
        return found;
    }

    /** Each member of a list of texts; none where there is no list. */
    List<String> texts(String name, String allowed) {
        List<String> found = new ArrayList<>();
        elements(name, (at, element) -> {
            if (element.isTextual() && !element.textValue().isBlank()) {
                found.add(element.textValue());
            } else {
                faults.add(new ExerciseFault(file, at, shown(element), allowed));
            }
        });
        return found;
    }

    /** Names of all fields, each of which then counts as known. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        known.addAll(names);
        return names;
    }

    /** Faults all fields that nobody asked for. */
    void done() {
        Iterator<String> names = object.fieldNames();
        while (names.hasNext()) {
            String name = names.next();
            if (!known.contains(name)) {
                fault(name, "unknown field", String.join(", ", known));
            }
        }
    }

    private void elements(String name, ElementUse use) {
        if (!has(name)) {
            return;
        }
        JsonNode list = object.get(name);
        if (!list.isArray()) {
            fault(name, shown(list), "a list, in square brackets");
            return;
        }
        for (int i = 0; i < list.size(); i++) {
            use.take(place(name) + "[" + i + "]", list.get(i));
        }
    }

    private interface ElementUse {
        void take(String at, JsonNode element);
    }

    private String place(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
