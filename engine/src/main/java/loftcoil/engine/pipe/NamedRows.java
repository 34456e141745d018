package loftcoil.engine.pipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/** The rows of a {@link ResourceTable}, each made into a record and found by its first column. */
final class NamedRows<T> {

    private final Map<String, T> byName;
    private final KnownNames known;

    private NamedRows(Map<String, T> byName, KnownNames known) {
        this.byName = byName;
        this.known = known;
    }

    /**
     * Reads a resource.
     *
     * @param kind what one row is called, for refusals
     * @throws IllegalStateException where the resource cannot be read or a name stands twice
     */
    static <T> NamedRows<T> read(String resource, String kind, Function<Map<String, String>, T> maker) {
        Map<String, T> byName = new LinkedHashMap<>();
        for (Map<String, String> row : ResourceTable.read(resource).rows()) {
            String name = row.values().iterator().next();
            if (byName.put(name, maker.apply(row)) != null) {
                throw new IllegalStateException(resource + ": " + name + " stands twice");
            }
        }
        return new NamedRows<>(Map.copyOf(byName), new KnownNames(kind, List.copyOf(byName.keySet())));
    }

    Optional<T> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    T require(String path, String name) {
        T row = byName.get(name);
        if (row == null) {
            throw new RefusedException(List.of(known.unknown(path, name)));
        }
        return row;
    }

    KnownNames known() {
        return known;
    }
}
