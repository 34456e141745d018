package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.json.JsonFields;

/**
 * A list of records.
 *
 * @param table the fields of each
 * @param count how many there may be; empty where the list may be left out, however long it is
 * @param needed whether it must stand in the file, if only as an empty list
 */
record Parts<R>(Table<R> table, Optional<Allowed> count, boolean needed) implements Form<List<R>> {

    @Override
    public List<R> read(JsonFields in, String name) {
        Optional<JsonNode> list = needed ? in.needed(name, JsonFields.LIST) : in.ask(name);
        List<JsonNode> items = list.map(node -> in.items(name, node)).orElse(List.of());
        List<R> records = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            records.add(table.read(in.section(name + "[" + i + "]", items.get(i))));
        }
        return records;
    }

    @Override
    public Optional<JsonNode> write(String path, List<R> records, Map<String, String> notes) {
        if (records.isEmpty() && !needed) {
            return Optional.empty();
        }
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        records.forEach(record -> out.add(table.object(item(path, out.size()), record, notes)));
        return Optional.of(out);
    }

    @Override
    public void faults(Place at, List<R> records, List<Fault> found) {
        count.flatMap(allowed -> allowed.faultIn(at.path(), records.size())).ifPresent(found::add);
        for (int i = 0; i < records.size(); i++) {
            table.faults(at.item(i), records.get(i), found);
        }
    }

    @Override
    public String get(Target at, List<R> records) {
        return table.get(at.next(), records.get(at.index(records.size())));
    }

    @Override
    public List<R> set(Target at, List<R> records) {
        int index = at.index(records.size());
        List<R> changed = new ArrayList<>(records);
        changed.set(index, table.set(at.next(), records.get(index)));
        return changed;
    }

    @Override
    public void walk(String path, List<R> records, Walker walker) {
        if (!records.isEmpty()) {
            walker.part(path);
        }
        for (int i = 0; i < records.size(); i++) {
            walker.part(item(path, i));
            table.walk(item(path, i), records.get(i), walker);
        }
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        table.known(path + "[]", rows);
    }

    private static String item(String path, int index) {
        return path + "[" + index + "]";
    }
}
