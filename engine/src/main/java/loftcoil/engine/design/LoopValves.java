package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands in the way of the water in a loop and has no business there: valves, open or shut, and a choked joint. */
public final class LoopValves {

    /** How far a gate valve stands open. */
    public enum Opening implements Coded {
        /** There is none at all, as it should be. */
        NO_VALVE("no valve", ""),
        /** Open. */
        FULLY_OPEN("fully open", "gate"),
        /** Half shut. */
        HALF_SHUT("half shut", "gate-half-shut"),
        /** Three quarters shut. */
        NEARLY_SHUT("three quarters shut", "gate-nearly-shut");

        private final String code;
        private final String fitting;

        Opening(String code, String fitting) {
            this.code = code;
            this.fitting = fitting;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** A joint of the hot pipe. */
    public enum Joint implements Coded {
        /** With its full way. */
        CLEAR("clear"),
        /** Narrowed by solder or scale. */
        CHOKED("choked to a fifth of its way");

        private final String code;

        Joint(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    private static final String CHOKED_JOINT = "choked";

    private static final Set<String> GATES = Stream.of(Opening.values())
            .filter(opening -> opening != Opening.NO_VALVE)
            .map(opening -> opening.fitting)
            .collect(Collectors.toUnmodifiableSet());

    private LoopValves() {}

    static int count(Design design) {
        return parts(design)
                .mapToInt(fittings -> GATES.stream()
                        .mapToInt(key -> fittings.getOrDefault(key, 0))
                        .sum())
                .sum();
    }

    static Opening opening(Design design) {
        return Stream.of(Opening.values())
                .filter(opening -> parts(design).anyMatch(fittings -> has(fittings, opening.fitting)))
                .reduce((wider, narrower) -> narrower)
                .orElse(Opening.NO_VALVE);
    }

    static Joint joint(Design design) {
        return parts(design).anyMatch(fittings -> has(fittings, CHOKED_JOINT)) ? Joint.CHOKED : Joint.CLEAR;
    }

    /** The design with this many gate valves in the loop, all in the first cold leg and fully open. */
    static Design withCount(Design design, int valves) {
        if (valves == count(design)) {
            return design.checked();
        }
        Design without = without(design, GATES);
        return valves == 0 ? without : inColdPipe(without, Opening.FULLY_OPEN.fitting, valves);
    }

    /** The design with its gate valves opened so; without one, it gets one. */
    static Design withOpening(Design design, Opening opening) {
        if (opening == opening(design)) {
            return design.checked();
        }
        int valves = Math.max(1, count(design));
        Design without = without(design, GATES);
        return opening == Opening.NO_VALVE ? without : inColdPipe(without, opening.fitting, valves);
    }

    /** The design with a joint of the first hot leg clear or choked. */
    static Design withJoint(Design design, Joint joint) {
        if (joint == joint(design)) {
            return design.checked();
        }
        if (joint == Joint.CLEAR) {
            return without(design, Set.of(CHOKED_JOINT));
        }
        return design.with(DesignTable.HOT_LEGS, inFirst(design.hotLegs(), CHOKED_JOINT, 1));
    }

    private static Design inColdPipe(Design design, String key, int count) {
        return design.with(DesignTable.COLD_LEGS, inFirst(design.coldLegs(), key, count));
    }

    private static List<Leg> inFirst(List<Leg> legs, String key, int count) {
        List<Leg> changed = new ArrayList<>(legs);
        changed.set(0, fitted(legs.get(0), Counts.with(legs.get(0).fittings(), key, count)));
        return changed;
    }

    private static Design without(Design design, Set<String> keys) {
        Coil coil = design.coil();
        UnaryOperator<Leg> freed = leg -> fitted(leg, Counts.without(leg.fittings(), keys));
        return design.with(
                design.tank(),
                CoilFields.TABLE.with(coil, CoilFields.FITTINGS, Counts.without(coil.fittings(), keys)),
                design.coldLegs().stream().map(freed).toList(),
                design.hotLegs().stream().map(freed).toList());
    }

    private static Leg fitted(Leg leg, Map<String, Integer> fittings) {
        return LegFields.TABLE.with(leg, LegFields.FITTINGS, fittings);
    }

    private static Stream<Map<String, Integer>> parts(Design design) {
        return Stream.concat(
                Stream.of(design.coil().fittings()),
                Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                        .map(Leg::fittings));
    }

    private static boolean has(Map<String, Integer> fittings, String key) {
        return fittings.getOrDefault(key, 0) > 0;
    }
}
