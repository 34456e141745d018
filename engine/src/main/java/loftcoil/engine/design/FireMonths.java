package loftcoil.engine.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Months in which the fire is lit, by a name that can be chosen. */
final class FireMonths {

    /** The months of a design that names others than those that can be chosen; choosing it leaves them as they are. */
    static final String OTHER = "other months, as the design says";

    private static final Map<String, List<Integer>> NAMED = named();

    private FireMonths() {}

    /** All names. */
    static List<String> names() {
        return List.copyOf(NAMED.keySet());
    }

    /** The name of a fire's months. */
    static String of(Fire fire) {
        List<Integer> months = fire.months().stream().sorted().distinct().toList();
        return NAMED.entrySet().stream()
                .filter(season -> season.getValue().equals(months))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(OTHER);
    }

    /** The fire lit in the months of that name; a name that cannot be chosen leaves them as they are. */
    static Fire lit(Fire fire, String name) {
        return name.equals(OTHER) ? fire : fire.withMonths(NAMED.getOrDefault(name, fire.months()));
    }

    private static Map<String, List<Integer>> named() {
        Map<String, List<Integer>> named = new LinkedHashMap<>();
        named.put("all year", List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12));
        named.put("September to May", List.of(1, 2, 3, 4, 5, 9, 10, 11, 12));
        named.put("October to April", List.of(1, 2, 3, 4, 10, 11, 12));
        named.put("November to March", List.of(1, 2, 3, 11, 12));
        named.put("October to December, March and April", List.of(3, 4, 10, 11, 12));
        named.put("March to October", List.of(3, 4, 5, 6, 7, 8, 9, 10));
        named.put(OTHER, List.of());
        return named;
    }
}
