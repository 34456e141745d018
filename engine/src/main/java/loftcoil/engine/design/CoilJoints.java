package loftcoil.engine.design;

import java.util.Map;
import java.util.Set;

/** Joints in the coil, which stand in the fire, and how it turns without them. */
public final class CoilJoints {

    /** How the coil turns. */
    enum Turns implements Coded {
        /** As it should be. */
        BENT("bent from one length"),
        /** Each of them two joints in the fire. */
        ELBOWS("with elbows");

        private final String code;

        Turns(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    private static final String BEND = "bend90";
    private static final String ELBOW = "elbow90";

    /** Fittings that are joined to the tube; a swept bend is the tube itself. Valves are another matter. */
    private static final Set<String> JOINED = Set.of(ELBOW, "elbow45", "tee-run", "tee-branch", "union", "choked");

    private CoilJoints() {}

    /** How many fittings are joined to the tube of a coil, valves not counted. */
    public static int count(Coil coil) {
        return coil.fittings().entrySet().stream()
                .filter(fitting -> JOINED.contains(fitting.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    static Turns turns(Design design) {
        return count(design.coil()) > 0 ? Turns.ELBOWS : Turns.BENT;
    }

    /** The same coil with each elbow a bend of its own tube and no other joint, or with each bend an elbow. */
    static Design with(Design design, Turns turns) {
        if (turns == turns(design)) {
            return design.checked();
        }
        Map<String, Integer> now = design.coil().fittings();
        int bends = now.getOrDefault(BEND, 0) + now.getOrDefault(ELBOW, 0);
        Map<String, Integer> turned = turns == Turns.BENT
                ? Counts.with(Counts.without(now, JOINED), BEND, bends)
                : Counts.with(Counts.without(now, Set.of(BEND)), ELBOW, Math.max(1, bends));
        return design.with(
                design.tank(),
                CoilFields.TABLE.with(design.coil(), CoilFields.FITTINGS, turned),
                design.coldLegs(),
                design.hotLegs());
    }
}
