package loftcoil.engine.pipe;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Lagging materials by name, with conductivity and service limit; see {@link LaggingMaterial}. */
public final class LaggingTable {

    private static final NamedRows<LaggingMaterial> ROWS =
            NamedRows.read(LaggingTable.class, "laggings.csv", "lagging", LaggingTable::material);

    private LaggingTable() {}

    /** The material of a name, exactly as in {@link #names}. */
    public static Optional<LaggingMaterial> find(String name) {
        return ROWS.find(name);
    }

    /**
     * The material of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name exactly as in {@link #names}
     * @throws RefusedException where there is no such material, naming those there are
     */
    public static LaggingMaterial require(String path, String name) {
        return ROWS.require(path, name);
    }

    /**
     * The material of a name.
     *
     * @param name exactly as in {@link #names}
     * @throws RefusedException where there is no such material, naming those there are
     */
    public static LaggingMaterial material(String name) {
        return require("lagging", name);
    }

    /** All names. */
    public static List<String> names() {
        return ROWS.known().names();
    }

    /** The names most like a mistyped one, the likeliest first. */
    public static List<String> nearest(String name) {
        return ROWS.known().nearest(name);
    }

    /** The fault of an unknown name, for collecting. */
    public static Fault unknown(String path, String name) {
        return ROWS.known().unknown(path, name);
    }

    private static LaggingMaterial material(Map<String, String> row) {
        double coolC = number(row, "cool_C");
        double cool = number(row, "k_cool");
        double slope = (number(row, "k_warm") - cool) / (number(row, "warm_C") - coolC);
        return new LaggingMaterial(
                row.getOrDefault("name", ""),
                cool - slope * coolC,
                slope,
                number(row, "limit_C"),
                row.getOrDefault("source", ""));
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
