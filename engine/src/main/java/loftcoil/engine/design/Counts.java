package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.pipe.FittingTable;

/**
 * How many fittings of each kind there are, by key.
 *
 * @param count what one number may be
 */
record Counts(Leaf<Integer> count) implements Form<Map<String, Integer>> {

    @Override
    public Map<String, Integer> read(JsonFields in, String name) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        in.ask(name).map(node -> in.section(name, node)).ifPresent(section -> section.names()
                .forEach(key -> counts.put(key, count.read(section, key))));
        return counts;
    }

    @Override
    public Optional<JsonNode> write(String path, Map<String, Integer> counts, Map<String, String> notes) {
        if (counts.isEmpty()) {
            return Optional.empty();
        }
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        counts.forEach(out::put);
        return Optional.of(out);
    }

    @Override
    public void faults(Place at, Map<String, Integer> counts, List<Fault> found) {
        counts.forEach((key, number) -> {
            if (FittingTable.find(key).isEmpty()) {
                found.add(FittingTable.unknown(at.field(PlainText.cut(key)).path(), key));
            }
            count.faults(at.field(key), number, found);
        });
    }

    @Override
    public String get(Target at, Map<String, Integer> counts) {
        String key = at.step();
        at.next().end();
        return count.get(at.next(), counts.getOrDefault(key, 0));
    }

    @Override
    public Map<String, Integer> set(Target at, Map<String, Integer> counts) {
        String key = at.step();
        Map<String, Integer> changed = new TreeMap<>(counts);
        changed.put(key, count.set(at.next(), counts.getOrDefault(key, 0)));
        return changed;
    }

    @Override
    public void walk(String path, Map<String, Integer> counts, Walker walker) {
        counts.forEach((key, number) -> walker.field(path + "." + key, Optional.of(number.toString())));
    }

    @Override
    public void known(String path, Field<?, ?> row, Consumer<DesignField> rows) {
        rows.accept(count.described(path + ".*", row, Optional.of("none of that kind"), Optional.empty()));
    }

    /** The counts without those of some keys. */
    static Map<String, Integer> without(Map<String, Integer> counts, Set<String> keys) {
        Map<String, Integer> left = new TreeMap<>(counts);
        left.keySet().removeAll(keys);
        return left;
    }

    /** The counts with one of them changed. */
    static Map<String, Integer> with(Map<String, Integer> counts, String key, int number) {
        Map<String, Integer> changed = new TreeMap<>(counts);
        changed.put(key, number);
        return changed;
    }
}
