package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.json.JsonFields;

/**
 * How the value of a field is read, written, judged, shown and changed. A {@link Leaf} is one value, a {@link Said} one that may
 * be left out, a {@link Table} a record, a {@link Part} a record that may be left out, {@link Parts} a list of them and
 * {@link Counts} numbers by key.
 */
interface Form<V> {

    /** The word that takes out what may be left out. */
    String NOT_SAID = "not said";

    /** The value of the field of that name; what is missing or wrong is noted, and a placeholder stands in for it. */
    V read(JsonFields in, String name);

    /** The value as JSON, with the notes of its objects; empty where it is left out. */
    Optional<JsonNode> write(String path, V value, Map<String, String> notes);

    /** Notes all that is wrong with a value that stands at a place. */
    void faults(Place at, V value, List<Fault> found);

    /** The text of the value at the target; where that lacks a part, of what the part is started with. */
    String get(Target at, V value);

    /**
     * The value with the target's text in the target's place.
     *
     * @throws loftcoil.engine.fault.RefusedException where there is no such place or the text does not fit it
     */
    V set(Target at, V value);

    /** Shows every part and every field that stands in a value. */
    void walk(String path, V value, Walker walker);

    /**
     * One's own value, gone on with another's change: where it stood as the other found it, it becomes what the other made of it.
     *
     * @param base as the other found it
     * @param ours one's own
     * @param theirs what the other made of it
     */
    default V merged(V base, V ours, V theirs) {
        return ours.equals(base) ? theirs : ours;
    }

    /** Tells every field there can be. */
    void known(String path, Field<?, ?> row, Consumer<DesignField> rows);

    /** Sees what stands in a design. */
    interface Walker {
        /** A field; its text is empty where it may be left out and is. */
        void field(String path, Optional<String> text);

        /** A record or list that may be left out and is not. */
        void part(String path);
    }

    /** The path of a field of a record. */
    static String at(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
