package loftcoil.engine.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import loftcoil.engine.fault.Fault;

/**
 * One field of a record: all that reading, writing, judging, changing and showing it needs to know.
 *
 * @param name its name in the JSON
 * @param label what it is called
 * @param help one line on what is wanted there
 * @param form what its values are like
 * @param get takes it from its record
 */
record Field<R, V>(String name, String label, String help, Form<V> form, Function<R, V> get) {

    V of(R owner) {
        return get.apply(owner);
    }

    void write(ObjectNode out, String path, R owner, Map<String, String> notes) {
        form.write(Form.at(path, name), of(owner), notes).ifPresent(node -> out.set(name, node));
    }

    void faults(Place at, R owner, List<Fault> found) {
        form.faults(at.field(name), of(owner), found);
    }

    String text(Target at, R owner) {
        return form.get(at, of(owner));
    }

    void walk(String path, R owner, Form.Walker walker) {
        form.walk(Form.at(path, name), of(owner), walker);
    }

    void known(String path, Consumer<DesignField> rows) {
        form.known(Form.at(path, name), this, rows);
    }
}
