package loftcoil.engine.loop;

import java.util.List;
import java.util.Map;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.Tube;

/** Loops for tests: square ones in which every figure can be worked out on paper. */
final class Loops {

    static final Tube TUBE_22 = new Tube("22x0.9", 0.022, 0.0009);
    /** Thick enough that no test notices the loss. */
    static final Lagging THICK = new Lagging("PIR foam", 0.5);

    private Loops() {}

    /**
     * A square loop: down the cold side, along a level coil, up the hot side, into a tank that is only a point.
     *
     * @param tube the tube of all of it
     * @param heightM height of both sides, m
     * @param widthM level run on each side and length of the coil, m
     */
    static CircuitPlan square(Tube tube, double heightM, double widthM) {
        Pipe cold = new Pipe("down", tube, heightM + widthM / 2, -heightM, Map.of(), THICK, 20);
        Pipe coil = new Pipe("coil", tube, widthM, 0, Map.of(), THICK, 20);
        Pipe hot = new Pipe("up", tube, heightM + widthM / 2, heightM, Map.of(), THICK, 20);
        LoopHeights heights = new LoopHeights(heightM, heightM, heightM + 1);
        return new CircuitPlan(heights, List.of(cold), coil, List.of(hot), LoopKind.IDEAL);
    }

    static Circuit lit(CircuitPlan plan, double tankC, double heatW) {
        return Circuit.of(plan, new Setting(tankC, 0, Firing.lit(heatW)));
    }

    static SteadyFlow forward(CircuitPlan plan, double tankC, double heatW) {
        return lit(plan, tankC, heatW).search().forward().orElseThrow();
    }

    /** The loop seen in a mirror: what was the cold side is the hot side, the coil turned round. */
    static CircuitPlan mirrored(CircuitPlan plan) {
        return new CircuitPlan(
                plan.heights(), backward(plan.hotLegs()), turned(plan.coil()), backward(plan.coldLegs()), plan.kind());
    }

    private static List<Pipe> backward(List<Pipe> legs) {
        List<Pipe> turned =
                new java.util.ArrayList<>(legs.stream().map(Loops::turned).toList());
        java.util.Collections.reverse(turned);
        return turned;
    }

    private static Pipe turned(Pipe pipe) {
        return new Pipe(
                pipe.name(),
                pipe.tube(),
                pipe.lengthM(),
                -pipe.riseM(),
                pipe.fittings(),
                pipe.lagging(),
                pipe.aroundC());
    }
}
