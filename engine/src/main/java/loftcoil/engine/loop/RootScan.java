package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds every balance of drive and resistance in one direction. The range of flows is walked in equal ratios; where the
 * residual changes sign between two flows at which the water stays liquid, the root is closed in by bracketing. Two roots
 * closer than one step (three tenths of the flow) cancel each other and can be missed; they are a stable and an unstable flow
 * about to vanish.
 */
final class RootScan {

    private static final int STEPS_PER_DECADE = 9;
    private static final int MOST_EVALUATIONS = 300;
    private static final double RELATIVE = 1e-10;
    /** Good enough for a balance, Pa. */
    private static final double NEAR_ZERO = 1e-10;
    /** How near to boiling the slowest flow that does not is looked for, K: a thousandth of what is told. */
    private static final double AT_THE_EDGE_K = 1e-6;

    /** A flow at which drive and resistance balance. */
    record Root(double signedFlow, boolean stable) {}

    /** The slowest flow from which on water stays liquid, with drive and resistance there. */
    record Edge(double signedFlow, double drivePa, double frictionPa, boolean freezes, BoilMargin margin) {}

    private final March march;
    private final double sign;
    private final boolean firstStableOnly;
    private final List<Root> roots = new ArrayList<>();
    private Optional<Edge> edge = Optional.empty();
    private double bestDrivePa = Double.NEGATIVE_INFINITY;
    private boolean anyLiquid;
    private boolean anyStable;

    private RootScan(March march, int direction, boolean firstStableOnly) {
        this.march = march;
        this.firstStableOnly = firstStableOnly;
        this.sign = Direction.sign(direction);
    }

    static RootScan of(March march, int direction, FlowRange range) {
        RootScan scan = new RootScan(march, direction, false);
        scan.walk(range);
        return scan;
    }

    /** The slowest stable flow of a direction: what the whole scan would find first, without what it would find after. */
    static Optional<Root> firstStable(March march, int direction, FlowRange range) {
        RootScan scan = new RootScan(march, direction, true);
        scan.walk(range);
        return scan.roots.stream().filter(Root::stable).findFirst();
    }

    List<Root> roots() {
        return roots;
    }

    /** Where water first boils or freezes as the flow gets less; empty where it never does. */
    Optional<Edge> edge() {
        return edge;
    }

    /** Greatest drive in this direction over all flows seen at which water stays liquid, Pa. */
    double bestDrivePa() {
        return bestDrivePa;
    }

    private void walk(FlowRange range) {
        int steps = range.steps(STEPS_PER_DECADE);
        double before = range.lowKgPerS();
        double pushBefore = push(before);
        boolean liquidBefore = liquid();
        for (int k = 1; k <= steps && !(firstStableOnly && anyStable); k++) {
            double flow = range.at(k, steps);
            double push = push(flow);
            boolean liquid = liquid();
            if (liquid && !liquidBefore) {
                before = liquidEdge(before, flow);
                pushBefore = push(before);
                noteEdge(before);
                between(before, pushBefore, flow, push);
            } else if (!liquid && liquidBefore) {
                double last = liquidEdge(before, flow);
                between(before, pushBefore, last, push(last));
            } else if (liquid) {
                between(before, pushBefore, flow, push);
            } else {
                noteHopeless(flow, k == steps);
            }
            before = flow;
            pushBefore = push;
            liquidBefore = liquid;
        }
    }

    /** Net push in the direction looked at, Pa. */
    private double push(double flow) {
        return sign * march.residualPa(sign * flow);
    }

    private boolean liquid() {
        boolean liquid = march.boilMarginK() >= 0;
        if (liquid) {
            anyLiquid = true;
            bestDrivePa = Math.max(bestDrivePa, sign * march.drivePa);
        }
        return liquid;
    }

    private void noteEdge(double flow) {
        if (edge.isEmpty()) {
            edge = Optional.of(here(flow));
        }
    }

    /** Where no flow at all keeps the water liquid, the fastest is told. */
    private void noteHopeless(double flow, boolean last) {
        if (last && !anyLiquid) {
            edge = Optional.of(here(flow));
        }
    }

    private Edge here(double flow) {
        return new Edge(sign * flow, sign * march.drivePa, march.frictionPa, march.freezesFirst(), march.boilMargin());
    }

    private void between(double low, double pushLow, double high, double pushHigh) {
        if ((pushLow > 0) == (pushHigh > 0)) {
            return;
        }
        double root = solver().solve(MOST_EVALUATIONS, this::push, low, high);
        boolean stable = pushLow > pushHigh;
        anyStable |= stable;
        roots.add(new Root(sign * root, stable));
    }

    private double liquidEdge(double one, double other) {
        // Heated water warms with 1/flow: on that axis the room left is nearly a straight line.
        UnivariateFunction room = slowness -> {
            push(1 / slowness);
            return march.boilMarginK();
        };
        double low = Math.min(1 / one, 1 / other);
        double high = Math.max(1 / one, 1 / other);
        // One of the two may be the edge itself, on which rounding decides on which side it is.
        if (Math.abs(room.value(low)) <= AT_THE_EDGE_K) {
            return 1 / low;
        }
        if (Math.abs(room.value(high)) <= AT_THE_EDGE_K) {
            return 1 / high;
        }
        return 1
                / new BracketingNthOrderBrentSolver(RELATIVE, 1e-18, AT_THE_EDGE_K, 5)
                        .solve(MOST_EVALUATIONS, room, low, high, AllowedSolution.ABOVE_SIDE);
    }

    private static BracketingNthOrderBrentSolver solver() {
        return new BracketingNthOrderBrentSolver(RELATIVE, 1e-18, NEAR_ZERO, 5);
    }
}
