package loftcoil.engine.supply;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.pipe.ResourceTable;

/**
 * Flow a draw-off point is planned for: EN 806-3:2006, table 2. A gravity system of a small dwelling rarely reaches it and is
 * used all the same; it tells how far below mains comfort a tap is.
 *
 * @param name what it is
 * @param plannedLPerS flow planned for, QA, in L/s
 * @param leastLPerS least flow at which it serves, Qmin, in L/s
 * @param units loading units, 1 for each 0.1 L/s
 */
public record OutletNeed(String name, double plannedLPerS, double leastLPerS, int units) {

    private static final List<OutletNeed> ALL =
            ResourceTable.read(OutletNeed.class, "draw-off-points.csv").rows().stream()
                    .map(OutletNeed::of)
                    .toList();

    /** All draw-off points of the table. */
    public static List<OutletNeed> all() {
        return ALL;
    }

    /** The draw-off point of a name, exactly as in {@link #all}. */
    public static Optional<OutletNeed> find(String name) {
        return ALL.stream().filter(need -> need.name().equals(name)).findFirst();
    }

    /** Whether a tap gives at least the least flow. */
    public boolean servedBy(TapFlow flow) {
        return flow.flowLPerMin() >= 60 * leastLPerS;
    }

    private static OutletNeed of(Map<String, String> row) {
        return new OutletNeed(
                row.getOrDefault("name", ""),
                Double.parseDouble(row.getOrDefault("planned_L_s", "")),
                Double.parseDouble(row.getOrDefault("least_L_s", "")),
                Integer.parseInt(row.getOrDefault("units", "")));
    }
}
