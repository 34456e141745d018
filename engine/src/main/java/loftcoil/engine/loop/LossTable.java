package loftcoil.engine.loop;

import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.pipe.Tube;

/**
 * Heat loss of one kind of leg per metre and kelvin, read from a table against water temperature. Free convection
 * goes with the fourth root of the temperature difference, so the table is even in that root, where the loss is nearly
 * a straight line. Straight lines between the nodes are within 0.2 % of {@link PipeLoss} (held by a test), far inside the
 * ten or twenty per cent that its correlations promise.
 */
final class LossTable {

    private static final int NODES = 10;
    private static final double LEAST_DIFFERENCE_K = 0.05;

    private final double aroundC;
    private final double[] above;
    private final double[] below;
    private final double aboveSpan;
    private final double belowSpan;

    private LossTable(double aroundC, double[] above, double[] below) {
        this.aroundC = aroundC;
        this.above = above;
        this.below = below;
        this.aboveSpan = span(110 - aroundC);
        this.belowSpan = span(aroundC);
    }

    static LossTable of(Tube tube, Lagging lagging, double aroundC) {
        double[] above = new double[NODES];
        double[] below = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            above[i] = loss(tube, lagging, aroundC, root(span(110 - aroundC) * i / (NODES - 1)));
            below[i] = loss(tube, lagging, aroundC, -root(span(aroundC) * i / (NODES - 1)));
        }
        return new LossTable(aroundC, above, below);
    }

    double aroundC() {
        return aroundC;
    }

    /** Loss per metre of tube and kelvin of (water − surroundings), W/(m K). */
    double wPerMK(double waterC) {
        double difference = waterC - aroundC;
        double[] nodes = difference >= 0 ? above : below;
        double span = difference >= 0 ? aboveSpan : belowSpan;
        double x = Math.sqrt(Math.sqrt(Math.abs(difference))) / span * (NODES - 1);
        int i = Math.min((int) x, NODES - 2);
        double part = Math.min(x - i, 1);
        return nodes[i] + part * (nodes[i + 1] - nodes[i]);
    }

    private static double span(double differenceK) {
        return Math.sqrt(Math.sqrt(Math.max(differenceK, 1)));
    }

    private static double root(double s) {
        return s * s * s * s;
    }

    private static double loss(Tube tube, Lagging lagging, double aroundC, double differenceK) {
        // At no difference there is neither loss nor a defined film: the limit is taken a hair beside it.
        double apart = Math.copySign(Math.max(Math.abs(differenceK), LEAST_DIFFERENCE_K), differenceK);
        double waterC = Math.min(Math.max(aroundC + apart, 0), 110);
        return PipeLoss.wPerMK(tube, lagging, waterC, aroundC);
    }
}
