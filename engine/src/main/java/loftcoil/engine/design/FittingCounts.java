package loftcoil.engine.design;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Counts of fittings by key. */
final class FittingCounts {

    private FittingCounts() {}

    static Map<String, Integer> without(Map<String, Integer> counts, Set<String> keys) {
        Map<String, Integer> left = new TreeMap<>(counts);
        left.keySet().removeAll(keys);
        return left;
    }
}
