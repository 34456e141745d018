package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;

/**
 * How a loop is built, without saying how hot the tank is or whether the fire is lit.
 *
 * @param heights levels of the tank's ports and waterline
 * @param coldLegs from the cold port to the coil, at least one
 * @param coil the tube in the fire
 * @param hotLegs from the coil to the return port, at least one
 * @param kind whether the losses of a real loop are counted
 */
public record CircuitPlan(LoopHeights heights, List<Pipe> coldLegs, Pipe coil, List<Pipe> hotLegs, LoopKind kind) {

    /** Keeps copies of the lists. */
    public CircuitPlan {
        coldLegs = List.copyOf(coldLegs);
        hotLegs = List.copyOf(hotLegs);
    }

    /** All runs of tube in the forward direction. */
    public List<Pipe> forward() {
        List<Pipe> all = new ArrayList<>(coldLegs);
        all.add(coil);
        all.addAll(hotLegs);
        return all;
    }
}
