package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds every balance of drive and resistance in one direction. The range of flows is divided in equal ratios. Strides of a few such
 * steps are looked at by their ends first and halved where a balance, or an edge of boiling or freezing, may lie inside, down to single
 * steps; where the residual changes sign within one between two flows at which the water stays liquid, the root is closed in by
 * bracketing. Two roots closer than one step (three tenths of the flow) cancel each other and can be missed; they are a stable and an
 * unstable flow about to vanish.
 *
 * <p>Whether a stride is plain: resistance grows with flow, so that inside it lies between its values at the ends; the drive is
 * taken to leave the range of its own by no more than half of that range and a tenth of itself. Where one stays clear of the other all the way, there is
 * no balance. That this passes over nothing is held by a test against a scan of every step.
 */
final class RootScan {

    private static final int STEPS_PER_DECADE = 9;
    private static final int MOST_EVALUATIONS = 300;
    private static final double RELATIVE = 1e-10;
    /** Good enough for a balance, Pa. */
    private static final double NEAR_ZERO = 1e-10;
    /** The same as a share of the resistance: what the settling of a leg's mean temperature leaves open. */
    private static final double BALANCED = 1e-9;
    /** How near to boiling the slowest flow that does not is looked for, K: a thousandth of what is told. */
    private static final double AT_THE_EDGE_K = 1e-6;

    private static final int STRIDE = 4;
    private static final double BULGE = 0.5;
    private static final double LEAST_BULGE = 0.1;
    /** Room to boiling and freezing, or lack of it, at both ends of a stride from which it is taken to be so all the way, K. */
    private static final double SURE_ROOM_K = 5;

    /** A flow at which drive and resistance balance. */
    record Root(double signedFlow, boolean stable) {}

    /** The slowest flow from which on water stays liquid, with drive and resistance there. */
    record Edge(double signedFlow, double drivePa, double frictionPa, boolean freezes, BoilMargin margin) {}

    private final March march;
    private final double sign;
    private final boolean firstStableOnly;
    private final int stride;
    private final List<Root> roots = new ArrayList<>();
    private Optional<Edge> edge = Optional.empty();
    private double bestDrivePa = Double.NEGATIVE_INFINITY;
    private int bestStep;
    private boolean anyLiquid;
    private boolean anyStable;

    private RootScan(March march, int direction, boolean firstStableOnly, int stride) {
        this.march = march;
        this.stride = stride;
        this.firstStableOnly = firstStableOnly;
        this.sign = Direction.sign(direction);
    }

    static RootScan of(March march, int direction, FlowRange range) {
        return of(march, direction, range, STRIDE);
    }

    /** In strides of another length; of 1, no step is passed over. */
    static RootScan of(March march, int direction, FlowRange range, int stride) {
        RootScan scan = new RootScan(march, direction, false, stride);
        scan.walk(range);
        return scan;
    }

    /** The slowest stable flow of a direction: what the whole scan would find first, without what it would find after. */
    static Optional<Root> firstStable(March march, int direction, FlowRange range) {
        RootScan scan = new RootScan(march, direction, true, STRIDE);
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
        Trial low = trial(range.lowKgPerS(), 0);
        for (int k = 0; k < steps && !enough(); ) {
            int next = Math.min(k + stride, steps);
            Trial high = trial(range.at(next, steps), next);
            span(range, steps, low, high);
            low = high;
            k = next;
        }
        if (!anyLiquid) {
            trial(low.flow(), steps);
            edge = Optional.of(here(low.flow()));
        }
        settleBestDrive(range, steps);
    }

    private boolean enough() {
        return firstStableOnly && anyStable;
    }

    /** Looks for what lies between two flows, from the slower on. */
    private void span(FlowRange range, int steps, Trial low, Trial high) {
        if (high.step() - low.step() == 1) {
            step(low, high);
        } else if (!plain(low, high)) {
            int half = (low.step() + high.step()) / 2;
            Trial middle = trial(range.at(half, steps), half);
            span(range, steps, low, middle);
            if (!enough()) {
                span(range, steps, middle, high);
            }
        }
    }

    private void step(Trial low, Trial high) {
        if (high.liquid() && !low.liquid()) {
            Trial first = trial(liquidEdge(low, high), low.step());
            noteEdge(first.flow());
            between(first, high);
        } else if (!high.liquid() && low.liquid()) {
            between(low, trial(liquidEdge(low, high), high.step()));
        } else if (high.liquid()) {
            between(low, high);
        }
    }

    /** Whether nothing is to be found between two flows. */
    private static boolean plain(Trial low, Trial high) {
        if (low.liquid() != high.liquid()
                || Math.min(Math.abs(low.roomK()), Math.abs(high.roomK())) < SURE_ROOM_K) {
            return false;
        }
        if (!low.liquid()) {
            return true;
        }
        double most = Math.max(low.drivePa(), high.drivePa());
        double least = Math.min(low.drivePa(), high.drivePa());
        double bulge = BULGE * (most - least) + LEAST_BULGE * Math.max(Math.abs(most), Math.abs(least));
        return least - bulge > high.frictionPa() || most + bulge < low.frictionPa();
    }

    /** Drive and resistance at a flow, both as they count in the direction looked at. */
    private record Trial(double flow, int step, double drivePa, double frictionPa, double roomK) {

        double pushPa() {
            return drivePa - frictionPa;
        }

        boolean liquid() {
            return roomK >= 0;
        }
    }

    private Trial trial(double flow, int step) {
        push(flow);
        Trial trial = new Trial(flow, step, sign * march.drivePa, march.frictionPa, march.boilMarginK());
        if (trial.liquid()) {
            anyLiquid = true;
            if (trial.drivePa() > bestDrivePa) {
                bestDrivePa = trial.drivePa();
                bestStep = step;
            }
        }
        return trial;
    }

    /** Net push in the direction looked at, Pa. */
    private double push(double flow) {
        return sign * march.residualPa(sign * flow);
    }

    /** Where nothing flows the greatest drive is told: strides are filled in up to the top of their curve. */
    private void settleBestDrive(FlowRange range, int steps) {
        if (anyStable || !anyLiquid) {
            return;
        }
        for (int way = -1; way <= 1; way += 2) {
            int at;
            do {
                at = bestStep;
                int beside = at + way;
                if (beside >= 0 && beside <= steps) {
                    trial(range.at(beside, steps), beside);
                }
            } while (bestStep != at);
        }
    }

    private void noteEdge(double flow) {
        if (edge.isEmpty()) {
            edge = Optional.of(here(flow));
        }
    }

    private Edge here(double flow) {
        return new Edge(sign * flow, sign * march.drivePa, march.frictionPa, march.freezesFirst(), march.boilMargin());
    }

    private void between(Trial low, Trial high) {
        if ((low.pushPa() > 0) == (high.pushPa() > 0)) {
            return;
        }
        double nearPa = NEAR_ZERO + BALANCED * Math.max(low.frictionPa(), high.frictionPa());
        double root = new BracketingNthOrderBrentSolver(RELATIVE, 1e-18, nearPa, 5)
                .solve(
                        MOST_EVALUATIONS,
                        flow -> flow == low.flow() ? low.pushPa() : flow == high.flow() ? high.pushPa() : push(flow),
                        low.flow(),
                        high.flow(),
                        crossing(low.flow(), low.pushPa(), high.flow(), high.pushPa()));
        boolean stable = low.pushPa() > high.pushPa();
        anyStable |= stable;
        roots.add(new Root(sign * root, stable));
    }

    private double liquidEdge(Trial low, Trial high) {
        // Heated water warms with 1/flow: on that axis the room left is nearly a straight line.
        double slow = 1 / low.flow();
        double fast = 1 / high.flow();
        UnivariateFunction room = slowness -> {
            if (slowness == slow) {
                return low.roomK();
            }
            if (slowness == fast) {
                return high.roomK();
            }
            push(1 / slowness);
            return march.boilMarginK();
        };
        return 1
                / new BracketingNthOrderBrentSolver(RELATIVE, 1e-18, AT_THE_EDGE_K, 5)
                        .solve(
                                MOST_EVALUATIONS,
                                room,
                                fast,
                                slow,
                                crossing(fast, high.roomK(), slow, low.roomK()),
                                AllowedSolution.ABOVE_SIDE);
    }

    /** Where a straight line through two points of unlike sign crosses nought; well inside them. */
    private static double crossing(double one, double valueThere, double other, double valueAtOther) {
        double share = valueThere / (valueThere - valueAtOther);
        return one + Math.min(Math.max(share, 0.01), 0.99) * (other - one);
    }
}
