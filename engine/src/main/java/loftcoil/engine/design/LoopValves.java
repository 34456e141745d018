package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** What stands in the way of the water in a loop and has no business there: valves, open or shut, and a choked joint. */
public final class LoopValves {

    /** No valve at all, as it should be. */
    public static final String NO_VALVE = "no valve";

    /** How far a gate valve can stand open. */
    public static final List<String> OPENINGS = List.of(NO_VALVE, "fully open", "half shut", "three quarters shut");

    /** A joint with its full way. */
    public static final String CLEAR = "clear";

    /** A joint that solder or scale has choked. */
    public static final String CHOKED = "choked to a fifth of its way";

    private static final String OPEN_GATE = "gate";
    private static final String CHOKED_JOINT = "choked";

    /** Key of the fitting for each opening. */
    private static final Map<String, String> KEYS =
            Map.of("fully open", OPEN_GATE, "half shut", "gate-half-shut", "three quarters shut", "gate-nearly-shut");

    private static final Set<String> GATES = Set.copyOf(KEYS.values());

    private LoopValves() {}

    static int count(Design design) {
        return parts(design)
                .mapToInt(fittings -> GATES.stream()
                        .mapToInt(key -> fittings.getOrDefault(key, 0))
                        .sum())
                .sum();
    }

    static String opening(Design design) {
        return OPENINGS.stream()
                .filter(KEYS::containsKey)
                .filter(opening -> parts(design).anyMatch(fittings -> has(fittings, key(opening))))
                .reduce((wider, narrower) -> narrower)
                .orElse(NO_VALVE);
    }

    static String choked(Design design) {
        return parts(design).anyMatch(fittings -> has(fittings, CHOKED_JOINT)) ? CHOKED : CLEAR;
    }

    static Design withCount(Design design, int valves) {
        if (valves == count(design)) {
            return design.checked();
        }
        Design without = without(design, GATES);
        return valves == 0 ? without : inColdPipe(without, OPEN_GATE, valves);
    }

    static Design withOpening(Design design, String opening) {
        if (opening.equals(opening(design))) {
            return design.checked();
        }
        int valves = Math.max(1, count(design));
        String key = key(opening);
        Design without = without(design, GATES);
        return opening.equals(NO_VALVE) ? without : inColdPipe(without, key, valves);
    }

    static Design withChoked(Design design, String joint) {
        if (joint.equals(choked(design))) {
            return design.checked();
        }
        if (joint.equals(CLEAR)) {
            return without(design, Set.of(CHOKED_JOINT));
        }
        List<Leg> hot = new ArrayList<>(design.hotLegs());
        hot.set(0, hot.get(0).withFittings(CHOKED_JOINT, 1));
        return design.withLegs(design.coldLegs(), hot);
    }

    private static Design inColdPipe(Design design, String key, int count) {
        List<Leg> cold = new ArrayList<>(design.coldLegs());
        cold.set(0, cold.get(0).withFittings(key, count));
        return design.withLegs(cold, design.hotLegs());
    }

    private static Design without(Design design, Set<String> keys) {
        UnaryOperator<Leg> freed = leg -> leg.withoutFittings(keys);
        return design.with(
                design.tank(),
                design.coil().withoutFittings(keys),
                design.coldLegs().stream().map(freed).toList(),
                design.hotLegs().stream().map(freed).toList());
    }

    private static Stream<Map<String, Integer>> parts(Design design) {
        return Stream.concat(
                Stream.of(design.coil().fittings()),
                Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                        .map(Leg::fittings));
    }

    private static String key(String opening) {
        return KEYS.getOrDefault(opening, "");
    }

    private static boolean has(Map<String, Integer> fittings, String key) {
        return fittings.getOrDefault(key, 0) > 0;
    }
}
