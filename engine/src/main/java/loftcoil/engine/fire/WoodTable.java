package loftcoil.engine.fire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.ResourceTable;

/**
 * Woods by name. {@code hardwood} and {@code softwood} are the typical values of the fuel standard; the species differ by
 * less than the moisture of any heap of wood does.
 */
public final class WoodTable {

    private static final Map<String, Wood> ROWS = read();

    private static final KnownNames KNOWN = new KnownNames("wood", List.copyOf(ROWS.keySet()));

    private WoodTable() {}

    /** The wood of a name, exactly as in {@link #known}. */
    public static Optional<Wood> find(String name) {
        return Optional.ofNullable(ROWS.get(name));
    }

    /**
     * The wood of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name exactly as in {@link #known}
     * @throws RefusedException where there is no such wood, naming the nearest
     */
    public static Wood require(String path, String name) {
        return find(name).orElseThrow(() -> new RefusedException(List.of(KNOWN.unknown(path, name))));
    }

    /** All names, the two kinds first. */
    public static KnownNames known() {
        return KNOWN;
    }

    private static Map<String, Wood> read() {
        Map<String, Wood> rows = new LinkedHashMap<>();
        for (Map<String, String> row :
                ResourceTable.read(WoodTable.class, "woods.csv").rows()) {
            String name = row.getOrDefault("name", "");
            double netJPerKg = 1e6 * number(row, "net_MJ_per_kg_dry");
            Wood wood =
                    new Wood(name, number(row, "carbon"), number(row, "hydrogen"), number(row, "oxygen"), netJPerKg);
            if (rows.put(name, wood) != null) {
                throw new IllegalStateException("woods.csv: " + name + " stands twice");
            }
        }
        return rows;
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
