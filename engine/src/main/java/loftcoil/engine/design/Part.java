package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.json.JsonFields;

/**
 * A record that may be left out.
 *
 * @param table its fields
 * @param start what it is started with when one of its fields is changed by name; empty where nothing may be assumed of it
 */
record Part<R>(Table<R> table, Optional<Function<Design, R>> start) implements Form<Optional<R>> {

    /** A part that a change starts from stated usual values. */
    static <R> Part<R> started(Table<R> table, Function<Design, R> start) {
        return new Part<>(table, Optional.of(start));
    }

    /** A part that has to be told whole. */
    static <R> Part<R> toldWhole(Table<R> table) {
        return new Part<>(table, Optional.empty());
    }

    @Override
    public Optional<R> read(JsonFields in, String name) {
        return in.ask(name).map(node -> table.read(in.section(name, node)));
    }

    @Override
    public Optional<JsonNode> write(String path, Optional<R> value, Map<String, String> notes) {
        return value.map(record -> table.object(path, record, notes));
    }

    @Override
    public void faults(Place at, Optional<R> value, List<Fault> found) {
        value.ifPresent(record -> table.faults(at, record, found));
    }

    @Override
    public String get(Target at, Optional<R> value) {
        return orStarted(at, value).map(record -> table.get(at, record)).orElse(NOT_SAID);
    }

    @Override
    public Optional<R> set(Target at, Optional<R> value) {
        R record = orStarted(at, value)
                .orElseThrow(() -> at.refused(
                        "\"" + at.text() + "\"",
                        "a design in which the whole part stands",
                        "nothing may be assumed of the other fields of this part"));
        return Optional.of(table.set(at, record));
    }

    private Optional<R> orStarted(Target at, Optional<R> value) {
        return value.or(() -> start.map(started -> started.apply(at.design())))
                .or(() -> at.sketched() ? Optional.of(table.blank()) : Optional.empty());
    }

    /** Field by field where both have it; a part that both began is that of ours where ours says more. */
    @Override
    public Optional<R> merged(Optional<R> base, Optional<R> ours, Optional<R> theirs) {
        if (ours.isEmpty() || theirs.isEmpty() || ours.equals(base)) {
            return ours.equals(base) ? theirs : ours;
        }
        return Optional.of(table.merged(base.orElseGet(table::blank), ours.get(), theirs.get()));
    }

    @Override
    public void walk(String path, Optional<R> value, Walker walker) {
        value.ifPresent(record -> {
            walker.part(path);
            table.walk(path, record, walker);
        });
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        table.known(path, rows);
    }
}
