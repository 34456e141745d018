package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.json.JsonFields;

/** All fields of a record, in the order they are written, and how the record is made of their values. */
final class Table<R> implements Form<R> {

    /** Gives the value of each field of a record that is being made. */
    interface Values<R> {
        <V> V of(Field<R, V> field);
    }

    private final List<Field<R, ?>> fields;
    private final Function<Values<R>, R> maker;

    /**
     * A table.
     *
     * @param fields every field once
     * @param maker makes the record, asking for every field once, in that order
     */
    Table(List<Field<R, ?>> fields, Function<Values<R>, R> maker) {
        this.fields = List.copyOf(fields);
        this.maker = maker;
    }

    /** The record with one field changed: the one place where a record is copied. */
    <C> R with(R record, Field<R, C> changed, C value) {
        return maker.apply(new Values<>() {
            @Override
            @SuppressWarnings("unchecked") // no two fields have one name, so it is the same field and type
            public <V> V of(Field<R, V> field) {
                return field.name().equals(changed.name()) ? (V) value : field.of(record);
            }
        });
    }

    R read(JsonFields section) {
        R record = maker.apply(new Values<>() {
            @Override
            public <V> V of(Field<R, V> field) {
                return field.form().read(section, field.name());
            }
        });
        section.done();
        return record;
    }

    /** A record in which nothing is told: its values are the placeholders of what is missing. */
    R blank() {
        return read(JsonFields.of(JsonNodeFactory.instance.objectNode()).object("", JsonFields.OBJECT));
    }

    @Override
    public R read(JsonFields in, String name) {
        return read(in.object(name, JsonFields.OBJECT));
    }

    ObjectNode object(String path, R record, Map<String, String> notes) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        String said = notes.get(path);
        if (said != null) {
            out.put(JsonFields.NOTES, said);
        }
        fields.forEach(field -> field.write(out, path, record, notes));
        return out;
    }

    @Override
    public Optional<JsonNode> write(String path, R record, Map<String, String> notes) {
        return Optional.of(object(path, record, notes));
    }

    /** Field by field. */
    @Override
    public R merged(R base, R ours, R theirs) {
        return maker.apply(new Values<>() {
            @Override
            public <V> V of(Field<R, V> field) {
                return field.form().merged(field.of(base), field.of(ours), field.of(theirs));
            }
        });
    }

    @Override
    public void faults(Place at, R record, List<Fault> found) {
        for (Field<R, ?> field : fields) {
            field.faults(at, record, found);
        }
    }

    @Override
    public String get(Target at, R record) {
        return field(at).text(at.next(), record);
    }

    @Override
    public R set(Target at, R record) {
        return set(at, record, field(at));
    }

    private <V> R set(Target at, R record, Field<R, V> field) {
        return with(record, field, field.form().set(at.next(), field.of(record)));
    }

    private Field<R, ?> field(Target at) {
        return fields.stream()
                .filter(field -> field.name().equals(at.step()))
                .findFirst()
                .orElseThrow(at::unknown);
    }

    @Override
    public void walk(String path, R record, Walker walker) {
        fields.forEach(field -> field.walk(path, record, walker));
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        known(path, rows);
    }

    void known(String path, Consumer<DesignField> rows) {
        fields.forEach(field -> field.known(path, rows));
    }
}
