package loftcoil.engine.pipe;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Fittings by key, with the constants of the two-K method; see {@link Fitting}. */
public final class FittingTable {

    private static final NamedRows<Fitting> ROWS = NamedRows.read(
            FittingTable.class,
            "fittings.csv",
            "fitting",
            row -> new Fitting(
                    row.getOrDefault("key", ""),
                    row.getOrDefault("words", ""),
                    Double.parseDouble(row.getOrDefault("k1", "")),
                    Double.parseDouble(row.getOrDefault("k_turbulent", "")),
                    "yes".equals(row.get("sized")),
                    row.getOrDefault("source", "")));

    private FittingTable() {}

    /** The fitting of a key, exactly as in {@link #names}. */
    public static Optional<Fitting> find(String key) {
        return ROWS.find(key);
    }

    /**
     * The fitting of a key.
     *
     * @param path where the key stands, for the refusal
     * @param key exactly as in {@link #names}
     * @throws RefusedException where there is no such fitting, naming the nearest
     */
    public static Fitting require(String path, String key) {
        return ROWS.require(path, key);
    }

    /** All keys. */
    public static List<String> names() {
        return ROWS.known().names();
    }

    /** The keys most like a mistyped one, the likeliest first. */
    public static List<String> nearest(String key) {
        return ROWS.known().nearest(key);
    }

    /** The fault of an unknown key, for collecting. */
    public static Fault unknown(String path, String key) {
        return ROWS.known().unknown(path, key);
    }

    /**
     * Loss coefficient of the fitting of a key; see {@link Fitting#k}.
     *
     * @param key exactly as in {@link #names}
     * @param reynolds Reynolds number on the bore, above 0 to 1e8
     * @param boreM bore of the tube in m, 0.001 to 0.5
     * @return a plain number, in velocity heads
     * @throws RefusedException where there is no such fitting, or a value is outside its range or not a number
     */
    public static double k(String key, double reynolds, double boreM) {
        return require("key", key).k(reynolds, boreM);
    }
}
