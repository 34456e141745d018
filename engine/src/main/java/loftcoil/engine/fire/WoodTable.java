package loftcoil.engine.fire;

import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.NamedRows;

/**
 * Woods by name. {@code hardwood} and {@code softwood} are the typical values of the fuel standard; the species differ by
 * less than the moisture of any heap of wood does.
 */
public final class WoodTable {

    private static final NamedRows<Wood> ROWS = NamedRows.read(
            WoodTable.class,
            "woods.csv",
            "wood",
            row -> new Wood(
                    row.getOrDefault("name", ""),
                    number(row, "carbon"),
                    number(row, "hydrogen"),
                    number(row, "oxygen"),
                    1e6 * number(row, "net_MJ_per_kg_dry")));

    private WoodTable() {}

    /** The wood of a name, exactly as in {@link #known}. */
    public static Optional<Wood> find(String name) {
        return ROWS.find(name);
    }

    /**
     * The wood of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name exactly as in {@link #known}
     * @throws RefusedException where there is no such wood, naming the nearest
     */
    public static Wood require(String path, String name) {
        return ROWS.require(path, name);
    }

    /**
     * The wood of a name.
     *
     * @param name exactly as in {@link #known}
     * @throws RefusedException where there is no such wood, naming the nearest
     */
    public static Wood wood(String name) {
        return require("wood", name);
    }

    /** All names, the two kinds first. */
    public static KnownNames known() {
        return ROWS.known();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
