package loftcoil.engine.pipe;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Copper tubes by name: EN 1057 (Europe, {@code EN1057 22x0.9}: outer diameter and wall in mm), ASTM B88 types K, L and M
 * (North America, {@code B88 L 3/4}), its metric types A, B and C ({@code B88M B 22}) and AS 1432 types A and B (Australia,
 * {@code AS1432 B DN20}). Dimensions are nominal; the rows of AS 1432 are from memory. Any other copper tube is named by its outer diameter and wall in mm, {@code 35x1.1 copper}.
 */
public final class TubeTable {

    private static final NamedRows<Tube> ROWS = NamedRows.read(
            TubeTable.class,
            "tubes.csv",
            "tube",
            row -> new Tube(
                    row.getOrDefault("name", ""),
                    Double.parseDouble(row.getOrDefault("outer_mm", "")) / 1000,
                    Double.parseDouble(row.getOrDefault("wall_mm", "")) / 1000));

    /** Outer diameter x wall, both in mm. */
    private static final Pattern BY_SIZE =
            Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?)x(\\d{1,2}(?:\\.\\d{1,3})?) copper");

    private TubeTable() {}

    /** The tube of a name, as in {@link #names} or by its size; empty too where no tube of that size can be. */
    public static Optional<Tube> find(String name) {
        return ROWS.find(name).or(() -> bySize(name));
    }

    private static Optional<Tube> bySize(String name) {
        Matcher size = BY_SIZE.matcher(name);
        if (!size.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new Tube(name, Double.parseDouble(size.group(1)) / 1000, Double.parseDouble(size.group(2)) / 1000));
        } catch (RefusedException impossible) {
            return Optional.empty();
        }
    }

    /**
     * The tube of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name as in {@link #names}, or by its size
     * @throws RefusedException where there is no such tube, naming the nearest
     */
    public static Tube require(String path, String name) {
        return find(name).orElseGet(() -> ROWS.require(path, name));
    }

    /** All names: by standard, then type, then size. */
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
}
