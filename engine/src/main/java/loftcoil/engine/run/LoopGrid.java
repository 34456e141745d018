package loftcoil.engine.run;

import java.util.Optional;

/**
 * Flows of one loop at the nodes of two axes, smooth between them: cubic each way through the four nearest nodes (Catmull
 * and Rom's; Keys, IEEE Trans. Acoustics 29 (1981) 1153), the ends carried on straight. Looking up allocates nothing. Immutable.
 *
 * <p>Nodes at which no steady flow exists are filled from their neighbours by straight lines, with no room to boiling; the
 * room left at boiling is zero, so the edge of what can flow lies where the interpolated room is.
 */
final class LoopGrid {

    /** Finds the flow at a node; empty where there is none. */
    @FunctionalInterface
    interface Node {
        Optional<LoopPoint> at(double enteringC, double excessKgPerM3);
    }

    private final LoopAxes axes;
    private final double[] values;
    private final boolean any;

    private LoopGrid(LoopAxes axes, double[] values, boolean any) {
        this.axes = axes;
        this.values = values;
        this.any = any;
    }

    static LoopGrid of(LoopAxes axes, Node node) {
        double[] values = new double[axes.nodes() * LoopPoint.FIGURES];
        boolean[] there = new boolean[axes.nodes()];
        boolean any = false;
        for (int warmth = 0; warmth < axes.warmths(); warmth++) {
            for (int column = 0; column < axes.columns(); column++) {
                int at = warmth * axes.columns() + column;
                Optional<LoopPoint> point = node.at(axes.enteringC(warmth), axes.excessKgPerM3(column));
                there[at] = point.isPresent();
                any |= there[at];
                for (int f = 0; f < LoopPoint.FIGURES; f++) {
                    values[at * LoopPoint.FIGURES + f] = there[at] ? point.get().figure(f) : 0;
                }
            }
        }
        if (any) {
            new GridFill(axes, values, there).fill();
        }
        return new LoopGrid(axes, values, any);
    }

    /** Whether the loop flows anywhere on the grid. */
    boolean any() {
        return any;
    }

    /** Reads the figures at a place; outside the axes their end counts. */
    void read(double enteringC, double excessKgPerM3, LoopReading out) {
        double along = within(enteringC / axes.stepC(), axes.warmths());
        double across = within((excessKgPerM3 - axes.fromKgPerM3()) / axes.stepKgPerM3(), axes.columns());
        int warmth = Math.min((int) along, axes.warmths() - 2);
        int column = Math.min((int) across, axes.columns() - 2);
        weigh(along - warmth, warmth, axes.warmths(), out.warmWeights);
        weigh(across - column, column, axes.columns(), out.columnWeights);
        double flow = 0;
        double lost = 0;
        double room = 0;
        double heat = 0;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double share = out.warmWeights[i] * out.columnWeights[j];
                if (share != 0) {
                    int at = ((warmth - 1 + i) * axes.columns() + column - 1 + j) * LoopPoint.FIGURES;
                    flow += share * values[at];
                    lost += share * values[at + 1];
                    room += share * values[at + 2];
                    heat += share * values[at + 3];
                }
            }
        }
        out.set(flow, lost, room, heat);
    }

    private static double within(double place, int nodes) {
        return Math.min(Math.max(place, 0), nodes - 1.0);
    }

    /** Weights of the four nodes around a place, with a node beyond either end put on the straight line through the last two. */
    private static void weigh(double x, int cell, int nodes, double[] weights) {
        double first = x * (-0.5 + x * (1 - 0.5 * x));
        double last = x * x * (-0.5 + 0.5 * x);
        weights[0] = first;
        weights[1] = 1 + x * x * (-2.5 + 1.5 * x);
        weights[2] = x * (0.5 + x * (2 - 1.5 * x));
        weights[3] = last;
        if (cell == 0) {
            weights[0] = 0;
            weights[1] += 2 * first;
            weights[2] -= first;
        }
        if (cell == nodes - 2) {
            weights[3] = 0;
            weights[2] += 2 * last;
            weights[1] -= last;
        }
    }
}
