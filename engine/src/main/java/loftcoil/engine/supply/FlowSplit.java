package loftcoil.engine.supply;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * Flows of several open taps on one tree of pipes. Unknown are the flows of the taps, 0 or more; a pipe carries the sum of the
 * taps after it, so mass balances at every tee by construction. For each tap that runs, the head from waterline to mouth is
 * all lost on the way; for each that does not, even a first drop would need more head than there is.
 *
 * <p>These are the conditions for the least of a strictly convex function (the content of the network), since every loss
 * grows with its flow; so there is one answer. It is found by turns, one tap at a time by bracketing, which on a convex
 * function always descends; and, near the answer, by Newton's steps on all running taps at once, each taken only where it
 * lessens the greatest error.
 */
final class FlowSplit {

    /** The greatest error left, of the greatest head. */
    static final double TOLERANCE = 1e-11;

    private static final int MOST_ROUNDS = 20_000;
    private static final int NEWTON_EVERY = 3;
    private static final int MOST_HALVINGS = 8;

    private final List<SupplyPath> taps;
    private final HeadLoss[] pipes;
    private final double[] headM;
    private final double scaleM;
    private final double[] tapFlow;
    private final double[] pipeFlow;
    private int rounds;

    FlowSplit(List<SupplyPath> taps, HeadLoss[] pipes, double waterlineM) {
        this.taps = taps;
        this.pipes = pipes;
        headM = taps.stream()
                .mapToDouble(tap -> waterlineM - tap.outlet().levelM())
                .toArray();
        scaleM = Arrays.stream(headM).max().orElse(0);
        tapFlow = new double[taps.size()];
        pipeFlow = new double[pipes.length];
    }

    /** Solves. @return flow of each tap in m³/s */
    double[] solve() {
        if (!(scaleM > 0)) {
            return tapFlow.clone();
        }
        while (worst() > TOLERANCE * scaleM) {
            if (++rounds > MOST_ROUNDS) {
                throw new IllegalStateException(
                        "flows of " + taps.size() + " taps did not settle, " + worst() + " m left");
            }
            for (int tap = 0; tap < tapFlow.length; tap++) {
                setTap(tap, balance(tap));
            }
            if (tapFlow.length > 1 && rounds % NEWTON_EVERY == 0) {
                newton();
            }
        }
        return tapFlow.clone();
    }

    /** How many turns the last solution took. */
    int rounds() {
        return rounds;
    }

    /** Head left at a tap in m at the present flows: what the jet's way does not use up; negative where it lacks. */
    double leftOverM(int tap) {
        double left = headM[tap];
        for (int pipe : taps.get(tap).pipes()) {
            left -= pipes[pipe].headM(pipeFlow[pipe]);
        }
        HeadLoss last = pipes[taps.get(tap).lastPipe()];
        double flow = tapFlow[tap];
        return left - last.jetHeadM(flow) - taps.get(tap).outlet().outletK() * last.velocityHeadM(flow);
    }

    private double worst() {
        double worst = 0;
        for (int tap = 0; tap < tapFlow.length; tap++) {
            double left = leftOverM(tap);
            worst = Math.max(worst, tapFlow[tap] > 0 ? Math.abs(left) : left);
        }
        return worst;
    }

    private void setTap(int tap, double flow) {
        double before = tapFlow[tap];
        tapFlow[tap] = flow;
        for (int pipe : taps.get(tap).pipes()) {
            pipeFlow[pipe] = Math.max(0, pipeFlow[pipe] + flow - before);
        }
        if (before != flow) {
            sumPipes();
        }
    }

    /** Sums anew, so that no rounding gathers over many turns. */
    private void sumPipes() {
        Arrays.fill(pipeFlow, 0);
        for (int tap = 0; tap < tapFlow.length; tap++) {
            for (int pipe : taps.get(tap).pipes()) {
                pipeFlow[pipe] += tapFlow[tap];
            }
        }
    }

    /** The flow of one tap that balances its own head, the others held. */
    private double balance(int tap) {
        UnivariateFunction left = flow -> {
            setTap(tap, flow);
            return leftOverM(tap);
        };
        if (left.value(0) <= 0) {
            return 0;
        }
        // With all head in the jet alone: no real flow is greater, and there the balance is negative or zero.
        HeadLoss last = pipes[taps.get(tap).lastPipe()];
        double most = Math.sqrt(headM[tap] / last.velocityHeadM(1)) * (1 + 1e-9);
        return new BracketingNthOrderBrentSolver(1e-14, 1e-22, TOLERANCE * scaleM / 10, 5).solve(500, left, 0, most);
    }

    private void newton() {
        int[] running = IntStream.range(0, tapFlow.length)
                .filter(tap -> tapFlow[tap] > 0)
                .toArray();
        if (running.length < 2) {
            return;
        }
        double[] start = tapFlow.clone();
        double before = worst();
        RealVector step = newtonStep(running);
        double share = 1;
        for (int halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
            for (int i = 0; i < running.length; i++) {
                tapFlow[running[i]] = Math.max(0, start[running[i]] + share * step.getEntry(i));
            }
            sumPipes();
            if (worst() < before) {
                return;
            }
        }
        System.arraycopy(start, 0, tapFlow, 0, start.length);
        sumPipes();
    }

    /** Slopes by differences: two taps share the slope of every pipe on both their ways, so the matrix is positive definite. */
    private RealVector newtonStep(int[] running) {
        int n = running.length;
        double[] left = new double[n];
        double[][] slope = new double[n][n];
        for (int i = 0; i < n; i++) {
            left[i] = leftOverM(running[i]);
        }
        for (int k = 0; k < n; k++) {
            double flow = tapFlow[running[k]];
            double nudge = 1e-6 * flow;
            setTap(running[k], flow + nudge);
            for (int i = 0; i < n; i++) {
                slope[i][k] = (left[i] - leftOverM(running[i])) / nudge;
            }
            setTap(running[k], flow);
        }
        return new LUDecomposition(new Array2DRowRealMatrix(slope), 0)
                .getSolver()
                .solve(new ArrayRealVector(left));
    }
}
