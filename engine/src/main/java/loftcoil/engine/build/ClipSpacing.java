package loftcoil.engine.build;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import loftcoil.engine.pipe.ResourceTable;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeMetal;

/** The longest way from clip to clip. */
final class ClipSpacing {

    private static final double MM_PER_M = 1000;

    private record Row(double lyingM, double uprightM, double steelLyingM, double steelUprightM) {}

    private static final NavigableMap<Double, Row> BY_OUTER_MM = read();

    private ClipSpacing() {}

    /** Longest way between two clips of a tube full of water, m; that of the smallest row for a tube that is smaller still. */
    static double metres(Tube tube, boolean upright) {
        Map.Entry<Double, Row> found = BY_OUTER_MM.floorEntry(tube.outerM() * MM_PER_M + 1e-6);
        Row row = (found == null ? BY_OUTER_MM.firstEntry() : found).getValue();
        if (tube.metal() == TubeMetal.STEEL) {
            return upright ? row.steelUprightM() : row.steelLyingM();
        }
        return upright ? row.uprightM() : row.lyingM();
    }

    private static NavigableMap<Double, Row> read() {
        NavigableMap<Double, Row> rows = new TreeMap<>();
        for (Map<String, String> row :
                ResourceTable.read(ClipSpacing.class, "clip-spacing.csv").rows()) {
            rows.put(
                    number(row, "outer_mm"),
                    new Row(
                            number(row, "lying_m"),
                            number(row, "upright_m"),
                            number(row, "steel_lying_m"),
                            number(row, "steel_upright_m")));
        }
        return rows;
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.getOrDefault(column, ""));
    }
}
