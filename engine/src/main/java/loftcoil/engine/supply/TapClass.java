package loftcoil.engine.supply;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.pipe.ResourceTable;

/**
 * A tap as standards rate it: least flow fully open at a stated pressure before it.
 *
 * @param name what it is
 * @param rated its flow and pressure
 * @param source where the numbers come from
 */
public record TapClass(String name, RatedFlow rated, String source) {

    private static final List<TapClass> ALL = ResourceTable.read(TapClass.class, "tap-classes.csv").rows().stream()
            .map(TapClass::of)
            .toList();

    /** All classes of the table: those for low pressure first, then those for mains, the narrowest first. */
    public static List<TapClass> all() {
        return ALL;
    }

    /** The class of a name, exactly as in {@link #all}. */
    public static Optional<TapClass> find(String name) {
        return ALL.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    private static TapClass of(Map<String, String> row) {
        return new TapClass(
                row.getOrDefault("name", ""),
                new RatedFlow(
                        Double.parseDouble(row.getOrDefault("flow_L_per_min", "")),
                        Double.parseDouble(row.getOrDefault("pressure_kPa", ""))),
                row.getOrDefault("source", ""));
    }
}
