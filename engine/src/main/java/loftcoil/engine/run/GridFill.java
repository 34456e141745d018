package loftcoil.engine.run;

import java.util.Arrays;

/**
 * Fills the nodes of a grid at which no flow exists, ring by ring: the first rings lie on the straight lines through the two nodes
 * before them, along either axis; the rest are copies. Filled nodes have no room to boiling.
 */
final class GridFill {

    private static final int STRAIGHT_RINGS = 2;
    private static final double NO_ROOM_K = -0.05;
    private static final int ROOM = 2;

    private final LoopAxes axes;
    private final double[] values;
    private boolean[] there;

    GridFill(LoopAxes axes, double[] values, boolean[] there) {
        this.axes = axes;
        this.values = values;
        this.there = there;
    }

    /** Fills all; at least one node must be there. */
    void fill() {
        int ring = 0;
        while (!allThere()) {
            boolean[] next = Arrays.copyOf(there, there.length);
            int reach = ring < STRAIGHT_RINGS ? 2 : 1;
            boolean moved = ring(next, reach);
            // A lone node gives no straight line.
            if (!moved) {
                ring(next, 1);
            }
            there = next;
            ring++;
        }
    }

    private boolean ring(boolean[] next, int reach) {
        boolean moved = false;
        for (int warmth = 0; warmth < axes.warmths(); warmth++) {
            for (int column = 0; column < axes.columns(); column++) {
                int at = at(warmth, column);
                if (!there[at] && from(warmth, column, reach)) {
                    next[at] = true;
                    moved = true;
                }
            }
        }
        return moved;
    }

    /** Means of what the four directions say. */
    private boolean from(int warmth, int column, int reach) {
        int said = 0;
        int at = at(warmth, column) * LoopPoint.FIGURES;
        double[] sum = new double[LoopPoint.FIGURES];
        for (int way = 0; way < 4; way++) {
            int down = way == 0 ? 1 : way == 1 ? -1 : 0;
            int aside = way == 2 ? 1 : way == 3 ? -1 : 0;
            if (known(warmth + down, column + aside) && (reach == 1 || known(warmth + 2 * down, column + 2 * aside))) {
                said++;
                for (int f = 0; f < LoopPoint.FIGURES; f++) {
                    double near = value(warmth + down, column + aside, f);
                    sum[f] += reach == 1 ? near : 2 * near - value(warmth + 2 * down, column + 2 * aside, f);
                }
            }
        }
        for (int f = 0; said > 0 && f < LoopPoint.FIGURES; f++) {
            values[at + f] = f == ROOM ? Math.min(NO_ROOM_K, sum[f] / said) : sum[f] / said;
        }
        return said > 0;
    }

    private double value(int warmth, int column, int figure) {
        return values[at(warmth, column) * LoopPoint.FIGURES + figure];
    }

    private boolean known(int warmth, int column) {
        return warmth >= 0
                && warmth < axes.warmths()
                && column >= 0
                && column < axes.columns()
                && there[at(warmth, column)];
    }

    private int at(int warmth, int column) {
        return warmth * axes.columns() + column;
    }

    private boolean allThere() {
        for (boolean one : there) {
            if (!one) {
                return false;
            }
        }
        return true;
    }
}
