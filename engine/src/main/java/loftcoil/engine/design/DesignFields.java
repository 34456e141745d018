package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The fields of a design: which there are, what stands in them, where that is from, and in which two designs differ. A path such as
 * {@code coldLegs[1].riseM} names one field of one design, {@code coldLegs[].riseM} what is known of it.
 */
public final class DesignFields {

    private static final Map<String, DesignField> KNOWN = collect();
    private static final Set<String> PARTS = parts();

    private DesignFields() {}

    /** Every field there can be, in the order of the file. */
    public static List<DesignField> known() {
        return List.copyOf(KNOWN.values());
    }

    /** What is known of the field at a path, with or without its numbers; empty where there is no such field. */
    public static Optional<DesignField> at(String path) {
        return Optional.ofNullable(KNOWN.get(general(path)));
    }

    /** The paths of all fields there can be. */
    static List<String> paths() {
        return List.copyOf(KNOWN.keySet());
    }

    /** Whether a field, or a part with fields in it, can stand at a path. */
    static boolean exists(String path) {
        String general = general(path);
        return KNOWN.containsKey(general) || PARTS.contains(general);
    }

    /** The path without the numbers of items and the keys of fittings. */
    static String general(String path) {
        return path.replaceAll("\\[\\d+]", "[]").replaceFirst("\\.fittings\\..+", ".fittings.*");
    }

    /**
     * One field of a design.
     *
     * @param path where it stands
     * @param field what is known of it
     * @param text what stands there; empty where it may be left out and is
     * @param origin where that is from
     */
    public record Value(String path, DesignField field, Optional<String> text, Origin origin) {}

    /** Every field of a design, those that may be left out too where their part is there, in the order of the file. */
    public static List<Value> of(Design design) {
        List<Value> values = new ArrayList<>();
        texts(design).forEach((path, text) -> at(path).ifPresent(field ->
                values.add(new Value(path, field, text, Origins.of(design.origins(), path, text.isPresent())))));
        return List.copyOf(values);
    }

    /**
     * A field in which two designs differ.
     *
     * @param path where it stands
     * @param field what is known of it
     * @param before what stands there in the earlier design; empty where nothing does
     * @param after what stands there in the later one; empty where nothing does
     */
    public record Difference(String path, DesignField field, Optional<String> before, Optional<String> after) {}

    /** The fields in which two designs differ, in the order of the file; numbers have to be the same to the last digit. */
    public static List<Difference> compare(Design before, Design after) {
        Map<String, Optional<String>> old = texts(before);
        Map<String, Optional<String>> now = texts(after);
        Set<String> paths = new LinkedHashSet<>(old.keySet());
        paths.addAll(now.keySet());
        List<Difference> differences = new ArrayList<>();
        for (String path : paths) {
            Optional<String> was = old.getOrDefault(path, Optional.empty());
            Optional<String> is = now.getOrDefault(path, Optional.empty());
            if (!was.equals(is)) {
                at(path).ifPresent(field -> differences.add(new Difference(path, field, was, is)));
            }
        }
        return List.copyOf(differences);
    }

    /** What stands at every path of a design. */
    static Map<String, Optional<String>> texts(Design design) {
        Map<String, Optional<String>> texts = new LinkedHashMap<>();
        DesignTable.TABLE.walk("", design, new Form.Walker() {
            @Override
            public void field(String path, Optional<String> text) {
                texts.put(path, text);
            }

            @Override
            public void part(String path) {}
        });
        return texts;
    }

    /** The paths of all parts of a design that could be left out and are not. */
    static Set<String> partsOf(Design design) {
        Set<String> parts = new LinkedHashSet<>();
        DesignTable.TABLE.walk("", design, new Form.Walker() {
            @Override
            public void field(String path, Optional<String> text) {}

            @Override
            public void part(String path) {
                parts.add(path);
            }
        });
        return parts;
    }

    /** The path of the object or list that a path stands in; empty for one that stands in none. */
    static Optional<String> owner(String path) {
        int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
        return cut < 0 ? Optional.empty() : Optional.of(path.substring(0, cut));
    }

    private static Map<String, DesignField> collect() {
        Map<String, DesignField> known = new LinkedHashMap<>();
        DesignTable.TABLE.known("", field -> {
            if (known.put(field.path(), field) != null) {
                throw new IllegalStateException("two fields stand at " + field.path());
            }
        });
        return known;
    }

    private static Set<String> parts() {
        Set<String> parts = new LinkedHashSet<>();
        for (String path : KNOWN.keySet()) {
            Optional<String> owner = owner(path);
            while (owner.isPresent()) {
                parts.add(owner.get());
                owner = owner(owner.get());
            }
        }
        return parts;
    }
}
