package loftcoil.engine.build;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import loftcoil.engine.pipe.ResourceTable;
import loftcoil.engine.pipe.Tube;

/** Estimates of what fittings take off a length, and how deep a tube goes into them. */
final class TakeOffs {

    private static final double MM_PER_M = 1000;

    private record Row(double timesOuter, String words) {}

    private static final Map<String, Row> FITTINGS = fittings();
    private static final NavigableMap<Double, Double> SOCKETS = sockets();

    private TakeOffs() {}

    /**
     * From the middle of a fitting to the end of the tube inside it, mm.
     *
     * @param key key of the fitting table, or {@code coupling} or {@code reducer}
     */
    static double mm(String key, Tube tube) {
        return row(key).timesOuter() * tube.outerM() * MM_PER_M;
    }

    /** A fitting in a word or two, for a list of cuts. */
    static String words(String key) {
        return row(key).words();
    }

    private static Row row(String key) {
        Row row = FITTINGS.get(key);
        if (row == null) {
            throw new IllegalStateException("take-offs.csv has no row for " + key);
        }
        return row;
    }

    /** Depth of the socket for a tube, mm: that of its size, or of the next larger one in the table. */
    static double socketMm(Tube tube) {
        Map.Entry<Double, Double> size = SOCKETS.ceilingEntry(tube.outerM() * MM_PER_M - 1e-6);
        return (size == null ? SOCKETS.lastEntry() : size).getValue();
    }

    private static Map<String, Row> fittings() {
        Map<String, Row> fittings = new TreeMap<>();
        for (Map<String, String> row :
                ResourceTable.read(TakeOffs.class, "take-offs.csv").rows()) {
            Row fitting = new Row(number(row, "times_outer"), row.getOrDefault("words", ""));
            fittings.put(row.getOrDefault("key", ""), fitting);
        }
        return fittings;
    }

    private static NavigableMap<Double, Double> sockets() {
        NavigableMap<Double, Double> depths = new TreeMap<>();
        for (Map<String, String> row :
                ResourceTable.read(TakeOffs.class, "sockets.csv").rows()) {
            depths.put(number(row, "outer_mm"), number(row, "depth_mm"));
        }
        return depths;
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
