package loftcoil.engine.loop;

import java.util.function.DoubleUnaryOperator;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.pipe.Tube;
import org.jspecify.annotations.Nullable;

/**
 * Heat loss of one kind of leg per metre and kelvin, read from a table against water temperature. Free convection
 * goes with the fourth root of the temperature difference, so the table is even in that root, where the loss is nearly
 * a straight line. Parabolas through three nodes are within 0.5 % of {@link PipeLoss} (held by a test), far inside the
 * ten or twenty per cent that its correlations promise.
 */
final class LossTable {

    private static final int NODES = 10;
    /** Between the nodes the parabola may stand a little higher than at them. */
    private static final double MARGIN = 1.1;

    private static final double LEAST_DIFFERENCE_K = 0.05;

    private static final int TOP_C = 110;
    private static final int EVENLY_PER_K = 2;

    private final double aroundC;
    private final Side above;
    private final Side below;
    private volatile double @Nullable [] evenly;

    private LossTable(double aroundC, Side above, Side below) {
        this.aroundC = aroundC;
        this.above = above;
        this.below = below;
    }

    static LossTable of(Tube tube, Lagging lagging, double aroundC) {
        DoubleUnaryOperator loss = difference -> loss(tube, lagging, aroundC, difference);
        Side above = Side.of(loss, Math.max(0, -aroundC), Math.max(0, 110 - aroundC));
        Side below = Side.of(difference -> loss.applyAsDouble(-difference), Math.max(0, aroundC - 110), aroundC);
        return new LossTable(aroundC, above, below);
    }

    /** No loss at all. */
    static LossTable none(double aroundC) {
        Side none = new Side(0, 1, new double[NODES]);
        return new LossTable(aroundC, none, none);
    }

    /** The same with so many times the loss. */
    LossTable times(double factor) {
        return new LossTable(aroundC, above.times(factor), below.times(factor));
    }

    double aroundC() {
        return aroundC;
    }

    /** Loss per metre of tube and kelvin of (water − surroundings), W/(m K). */
    double wPerMK(double waterC) {
        double difference = waterC - aroundC;
        return difference >= 0 ? above.at(difference) : below.at(-difference);
    }

    /**
     * Loss of a metre, W, less than 0 where it gains, at temperatures half a kelvin apart: for marches that ask for it in every cell at every
     * step. Read with {@link #at}, it is within 0.03 W of {@link #wPerMK} times the difference (held by a test). Not to be written to.
     */
    double[] lostWPerM() {
        double[] lost = evenly;
        if (lost == null) {
            // Two threads may both work it out, to the same numbers.
            lost = new double[TOP_C * EVENLY_PER_K + 1];
            for (int i = 0; i < lost.length; i++) {
                double waterC = (double) i / EVENLY_PER_K;
                lost[i] = wPerMK(waterC) * (waterC - aroundC);
            }
            evenly = lost;
        }
        return lost;
    }

    /** Straight between the temperatures of {@link #lostWPerM}; the end's beyond 0 to 110 °C. */
    static double at(double[] lostWPerM, double waterC) {
        double place = Math.min(Math.max(waterC * EVENLY_PER_K, 0), lostWPerM.length - 1.0);
        int i = Math.min((int) place, lostWPerM.length - 2);
        return lostWPerM[i] + (place - i) * (lostWPerM[i + 1] - lostWPerM[i]);
    }

    /** More than a metre of it can lose or gain while its water is between 0 and 110 °C, W/m. */
    double mostW() {
        double differenceK = Math.max(Math.abs(aroundC), Math.abs(110 - aroundC));
        return MARGIN * differenceK * Math.max(above.most(), below.most());
    }

    /** Water warmer than its surroundings, or cooler: nodes even in the fourth root of the difference. */
    private static final class Side {
        private final double lowRoot;
        private final double rootStep;
        private final double perRootStep;
        private final double[] nodes;
        private final double most;

        Side(double lowRoot, double rootStep, double[] nodes) {
            this.lowRoot = lowRoot;
            this.rootStep = rootStep;
            this.perRootStep = 1 / rootStep;
            this.nodes = nodes;
            double greatest = 0;
            for (double node : nodes) {
                greatest = Math.max(greatest, node);
            }
            this.most = greatest;
        }

        static Side of(DoubleUnaryOperator loss, double lowK, double highK) {
            double lowRoot = root(lowK);
            double rootStep = Math.max(1e-3, (root(highK) - lowRoot) / (NODES - 1));
            double[] nodes = new double[NODES];
            for (int i = 0; i < NODES; i++) {
                double root = lowRoot + i * rootStep;
                nodes[i] = loss.applyAsDouble(root * root * root * root);
            }
            return new Side(lowRoot, rootStep, nodes);
        }

        Side times(double factor) {
            double[] times = nodes.clone();
            for (int i = 0; i < NODES; i++) {
                times[i] *= factor;
            }
            return new Side(lowRoot, rootStep, times);
        }

        double at(double difference) {
            double x = Math.min(Math.max(0, (root(difference) - lowRoot) * perRootStep), NODES - 1);
            int i = Math.min((int) x, NODES - 3);
            double u = x - i;
            return nodes[i] * (u - 1) * (u - 2) / 2 - nodes[i + 1] * u * (u - 2) + nodes[i + 2] * u * (u - 1) / 2;
        }

        double most() {
            return most;
        }

        private static double root(double difference) {
            return Math.sqrt(Math.sqrt(Math.max(0, difference)));
        }
    }

    private static double loss(Tube tube, Lagging lagging, double aroundC, double differenceK) {
        // At no difference there is neither loss nor a defined film: the limit is taken a hair beside it.
        double apart = Math.copySign(Math.max(Math.abs(differenceK), LEAST_DIFFERENCE_K), differenceK);
        double waterC = Math.min(Math.max(aroundC + apart, 0), 110);
        return PipeLoss.wPerMK(tube, lagging, waterC, aroundC);
    }
}
