package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * Finds every balance of drive and resistance in one direction. The range of flows is divided in equal ratios. Strides of a few such
 * steps are looked at by their ends first and halved where a balance, or an edge of boiling or freezing, may lie inside, down to single
 * steps; where the residual changes sign within one between two flows at which the water stays liquid, the root is closed in by
 * bracketing. Two roots closer than one step (three tenths of the flow) cancel each other and can be missed; they are a stable and an
 * unstable flow about to vanish.
 *
 * <p>Whether a stride is plain: resistance grows with flow, so that inside it lies between its values at the ends; the drive is
 * taken to leave the range of its own by no more than one and a half of that range and half of itself, and to keep half of itself where it is
 * larger than that range and the water too fast to come near the temperature around any leg. With the fire out and the surroundings equally
 * warm all round, each leg pushes the one way alone the more the faster the water is, which bounds the drive without any such assumption. Where one stays clear of the other all
 * the way, there is no balance. Other slow water is passed over by no more than two steps, unless it stands
 * at the temperature around all legs but for their beginnings. A test holds all of it against a scan of every step.
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

    /** How near to boiling or freezing a flow is looked at no longer roughly, K. */
    private static final double NEAR_THE_EDGE_K = 0.1;

    static final int STRIDE = 4;
    /** The same where the drive between two flows is bounded by what it is at them. */
    private static final int EVEN_STRIDE = 6;

    private static final double BULGE = 1.5;
    private static final double LEAST_BULGE = 0.5;
    /** Exchange under which the drive of a loop changes evenly with its flow. */
    private static final double FAST = 1;

    /** Longest stride that is passed over where it does not, in steps. */
    private static final int SLOW_STRIDE = 2;

    /** Exchange of each leg over which water stands at the temperature around legs but for their beginnings, which are as long as the flow is great. */
    private static final double STANDS = 12;

    private static final double FAR = 0.5;
    private static final double GIVES_WAY = 0.5;
    /** Room to boiling and freezing, or lack of it, at both ends of a stride from which it is taken to be so all the way, K. */
    private static final double SURE_ROOM_K = 5;

    /** Tells of a balance while the march stands at it. */
    interface Told {
        SteadyFlow at(double signedFlow, boolean stable);
    }

    /** The slowest flow from which on water stays liquid, with drive and resistance there. */
    record Edge(double signedFlow, double drivePa, double frictionPa, boolean freezes, BoilMargin margin) {}

    private final March march;
    private final Told told;
    private final double sign;
    private final FlowRange range;
    private final int steps;
    private final boolean firstStableOnly;
    private final int stride;
    private final List<SteadyFlow> roots = new ArrayList<>();
    private final List<Stride> passedOver = new ArrayList<>();
    private Optional<Edge> edge = Optional.empty();
    private double bestDrivePa = Double.NEGATIVE_INFINITY;
    private double bestFlow;
    /** Step from which the first edge is to be looked for, once it is known that there is one. */
    private int edgeFrom = -1;

    private boolean anyLiquid;
    private boolean anyStable;

    private RootScan(March march, Told told, int direction, FlowRange range, boolean firstStableOnly, int stride) {
        this.march = march;
        this.told = told;
        this.range = range;
        this.steps = range.steps(STEPS_PER_DECADE);
        this.stride = stride;
        this.firstStableOnly = firstStableOnly;
        this.sign = Direction.sign(direction);
    }

    static RootScan of(March march, Told told, int direction, FlowRange range) {
        return of(march, told, direction, range, STRIDE);
    }

    /** In strides of another length; of 1, no step is passed over. */
    static RootScan of(March march, Told told, int direction, FlowRange range, int stride) {
        RootScan scan = new RootScan(march, told, direction, range, false, stride);
        scan.walk();
        return scan;
    }

    /** The slowest stable flow of a direction: what the whole scan would find first, without what it would find after. */
    static Optional<SteadyFlow> firstStable(March march, Told told, int direction, FlowRange range) {
        RootScan scan = new RootScan(march, told, direction, range, true, STRIDE);
        scan.walk();
        return scan.roots.stream().filter(SteadyFlow::stable).findFirst();
    }

    List<SteadyFlow> roots() {
        return roots;
    }

    /** Where water first boils or freezes as the flow gets less; empty where it never does. Looked for when it is asked for. */
    Optional<Edge> edge() {
        if (edge.isEmpty() && edgeFrom >= 0) {
            Trial low = trial(range.at(edgeFrom, steps), edgeFrom);
            Trial high = trial(range.at(edgeFrom + 1, steps), edgeFrom + 1);
            while (!high.liquid()) {
                low = high;
                high = trial(range.at(low.step() + 1, steps), low.step() + 1);
            }
            noteEdge(settledTrial(liquidEdge(low, high), low.step()).flow());
        }
        return edge;
    }

    /** Greatest drive in this direction at the flows of all steps at which water stays liquid, Pa; only of use where nothing flows. */
    double bestDrivePa() {
        if (anyLiquid) {
            edge();
            settleBestDrive();
            push(bestFlow);
            bestDrivePa = sign * march.drivePa;
        }
        return bestDrivePa;
    }

    private void walk() {
        Trial low = trial(range.at(0, steps), 0);
        int longest = stride > 1 && march.evenlyAround() ? EVEN_STRIDE : stride;
        for (int k = 0; k < steps && !enough(); ) {
            int next = Math.min(k + (stride == 1 ? 1 : Math.max(longest, standing(low))), steps);
            Trial high = trial(range.at(next, steps), next);
            span(low, high);
            low = high;
            k = next;
        }
        if (!anyLiquid) {
            push(low.flow());
            edge = Optional.of(here(low.flow()));
        }
    }

    /** Steps from a flow to that at which the first leg no longer brings its water to the temperature around it. */
    private int standing(Trial low) {
        double times = low.leastExchange() / STANDS;
        return times > 1 && times < Double.POSITIVE_INFINITY
                ? (int) (steps * Math.log(times) / Math.log(range.highKgPerS() / range.lowKgPerS()))
                : 0;
    }

    private boolean enough() {
        return firstStableOnly && anyStable;
    }

    /** Looks for what lies between two flows, from the slower on. */
    private void span(Trial low, Trial high) {
        boolean plain = plain(low, high);
        if (plain) {
            passedOver.add(new Stride(low, high));
        }
        if (plain || high.step() - low.step() == 1) {
            if (!low.liquid() && high.liquid() && edgeFrom < 0) {
                edgeFrom = low.step();
            }
            if (!plain) {
                step(low, high);
            }
        } else {
            int half = (low.step() + high.step()) / 2;
            Trial middle = trial(range.at(half, steps), half);
            span(low, middle);
            if (!enough()) {
                span(middle, high);
            }
        }
    }

    private void step(Trial low, Trial high) {
        if (high.liquid() && !low.liquid()) {
            Trial first = settledTrial(liquidEdge(low, high), low.step());
            noteEdge(first.flow());
            between(first, high);
        } else if (!high.liquid() && low.liquid()) {
            between(low, settledTrial(liquidEdge(low, high), high.step()));
        } else if (high.liquid()) {
            between(low, high);
        }
    }

    /** Whether no balance lies between two flows, and no more than one edge. */
    private static boolean plain(Trial low, Trial high) {
        if (low.liquid() == high.liquid()) {
            if (Math.min(Math.abs(low.roomK()), Math.abs(high.roomK())) < SURE_ROOM_K) {
                return false;
            }
            if (!low.liquid()) {
                return true;
            }
        }
        if (high.step() - low.step() > SLOW_STRIDE && low.slow() && !high.stands() && high.pushes() == null) {
            return false;
        }
        return low.leastDrivePa(high) > high.frictionPa() || low.mostDrivePa(high) < low.frictionPa();
    }

    /** Drive and resistance at a flow, both as they count in the direction looked at. */
    private record Trial(
            double flow,
            int step,
            double drivePa,
            double frictionPa,
            double roomK,
            double exchange,
            double leastExchange,
            @Nullable Pushes pushes) {

        double pushPa() {
            return drivePa - frictionPa;
        }

        boolean liquid() {
            return roomK >= 0;
        }

        boolean slow() {
            return exchange >= FAST;
        }

        boolean stands() {
            return leastExchange >= STANDS;
        }

        /** Least drive between this flow and another, as it is taken. */
        double leastDrivePa(Trial other) {
            if (pushes != null && other.pushes != null) {
                return (drivePa + other.drivePa - pushes.apartPa(other.pushes)) / 2;
            }
            double least = Math.min(drivePa, other.drivePa);
            return least - Math.min(bulgePa(other), least > 0 ? kept(least, other) : Double.POSITIVE_INFINITY);
        }

        /** Greatest drive between this flow and another, as it is taken. */
        double mostDrivePa(Trial other) {
            if (pushes != null && other.pushes != null) {
                return (drivePa + other.drivePa + pushes.apartPa(other.pushes)) / 2;
            }
            double most = Math.max(drivePa, other.drivePa);
            return most + Math.min(bulgePa(other), most < 0 ? kept(-most, other) : Double.POSITIVE_INFINITY);
        }

        private double bulgePa(Trial other) {
            return BULGE * Math.abs(drivePa - other.drivePa)
                    + LEAST_BULGE * Math.max(Math.abs(drivePa), Math.abs(other.drivePa));
        }

        /** A drive that at both ends is far from nought, seen by how much it changes, gives way by no more than this while water is fast. */
        private double kept(double nearest, Trial other) {
            return !slow() && !other.slow() && nearest >= FAR * Math.abs(drivePa - other.drivePa)
                    ? GIVES_WAY * nearest
                    : Double.POSITIVE_INFINITY;
        }
    }

    /** Pushes of the legs at a flow, where each goes one way only as the flow grows: between two flows it lies between what it is at them. */
    private static final class Pushes {

        private final double[] pa;

        Pushes(double[] pa) {
            this.pa = pa;
        }

        /** What all legs together change by, whichever way each does, Pa. */
        double apartPa(Pushes other) {
            double sum = 0;
            for (int i = 0; i < pa.length; i++) {
                sum += Math.abs(pa[i] - other.pa[i]);
            }
            return sum;
        }
    }

    /** A flow looked at roughly, as long as that tells on which side of a balance and of boiling and freezing it lies. */
    private Trial trial(double flow, int step) {
        double roughlyPa = march.roughlyPa(sign * flow);
        return march.sureOfSign(roughlyPa) && Math.abs(march.boilMarginK()) > NEAR_THE_EDGE_K
                ? seen(flow, step)
                : settledTrial(flow, step);
    }

    private Trial settledTrial(double flow, int step) {
        push(flow);
        return seen(flow, step);
    }

    private Trial seen(double flow, int step) {
        Trial trial = new Trial(
                flow,
                step,
                sign * march.drivePa,
                march.frictionPa,
                march.boilMarginK(),
                march.exchange(),
                march.leastExchange(),
                march.evenlyAround() ? new Pushes(march.legPa()) : null);
        if (trial.liquid()) {
            anyLiquid = true;
            if (trial.drivePa() > bestDrivePa) {
                bestDrivePa = trial.drivePa();
                bestFlow = flow;
            }
        }
        return trial;
    }

    /** Net push in the direction looked at, Pa. */
    private double push(double flow) {
        return sign * march.residualPa(sign * flow);
    }

    /** Strides that were passed over are filled in where a greater drive than the greatest seen may be. */
    private void settleBestDrive() {
        while (!passedOver.isEmpty()) {
            Stride stride = passedOver.remove(passedOver.size() - 1);
            int half = (stride.low().step() + stride.high().step()) / 2;
            if (half > stride.low().step() && stride.low().mostDrivePa(stride.high()) > bestDrivePa) {
                Trial middle = trial(range.at(half, steps), half);
                passedOver.add(new Stride(stride.low(), middle));
                passedOver.add(new Stride(middle, stride.high()));
            }
        }
    }

    private record Stride(Trial low, Trial high) {}

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
        if (march.signedFlow() != sign * root) {
            push(root);
        }
        roots.add(told.at(sign * root, stable));
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
        // One of the two may be the edge itself.
        if (Math.abs(high.roomK()) <= AT_THE_EDGE_K) {
            return high.flow();
        }
        if (Math.abs(low.roomK()) <= AT_THE_EDGE_K) {
            return low.flow();
        }
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
