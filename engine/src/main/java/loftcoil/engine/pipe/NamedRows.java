package loftcoil.engine.pipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;

/** The rows of a {@link ResourceTable}, each made into a record and found by its first column. For the tables of any room. */
public final class NamedRows<T> {

    private final Map<String, T> byName;
    private final KnownNames known;

    private NamedRows(Map<String, T> byName, KnownNames known) {
        this.byName = byName;
        this.known = known;
    }

    /**
     * Reads a table that stands beside a class.
     *
     * @param beside any class of the room the table belongs to
     * @param resource file name of the table
     * @param kind what one row is called, for refusals
     * @param maker makes a row, by column name, into a record
     * @throws IllegalStateException where the resource cannot be read or a name stands twice
     */
    public static <T> NamedRows<T> read(
            Class<?> beside, String resource, String kind, Function<Map<String, String>, T> maker) {
        Map<String, T> byName = new LinkedHashMap<>();
        for (Map<String, String> row : ResourceTable.read(beside, resource).rows()) {
            String name = row.values().iterator().next();
            if (byName.put(name, maker.apply(row)) != null) {
                throw new IllegalStateException(resource + ": " + name + " stands twice");
            }
        }
        return new NamedRows<>(Map.copyOf(byName), new KnownNames(kind, List.copyOf(byName.keySet())));
    }

    /** The row of a name, exactly as in {@link #known}. */
    public Optional<T> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * The row of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name exactly as in {@link #known}
     * @throws RefusedException where there is no such row, naming the nearest
     */
    public T require(String path, String name) {
        T row = byName.get(name);
        if (row == null) {
            throw new RefusedException(List.of(known.unknown(path, name)));
        }
        return row;
    }

    /** All names, in the order of the table. */
    public KnownNames known() {
        return known;
    }
}
