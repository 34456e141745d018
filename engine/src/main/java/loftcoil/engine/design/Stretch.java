package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Changes the legs of one side so that its ends move: which leg gives way is always the one a builder would lengthen. */
final class Stretch {

    private Stretch() {}

    /** The legs with the one of the largest rise or fall ending this much higher, its level run kept. */
    static List<Leg> longestRise(List<Leg> legs, double upM) {
        return changed(legs, Comparator.comparingDouble(leg -> Math.abs(leg.riseM())), upM, true);
    }

    /** The legs with the one of the longest level run this much longer, its rise kept. */
    static List<Leg> levelRun(List<Leg> legs, double addedM) {
        return changed(legs, Comparator.comparingDouble(Leg::levelRunM), addedM, false);
    }

    private static List<Leg> changed(List<Leg> legs, Comparator<Leg> by, double byM, boolean rise) {
        if (legs.isEmpty() || byM == 0) {
            return legs;
        }
        int most = IntStream.range(0, legs.size())
                .boxed()
                .max((one, other) -> by.compare(legs.get(one), legs.get(other)))
                .orElse(0);
        List<Leg> changed = new ArrayList<>(legs);
        Leg leg = legs.get(most);
        changed.set(most, rise ? leg.withRiseM(leg.riseM() + byM) : leg.withLevelRunM(leg.levelRunM() + byM));
        return changed;
    }
}
