package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where a tank is cut so that layers end at its ports. Water leaves at a port's own height only where a layer ends there; by a whole
 * layer it leaves as if the port stood at that layer's far edge. Between two ports the layers are alike.
 */
final class LayerCuts {

    /** A port nearer than this to another cut, in layers between ports, gets none of its own: a thin layer would cost more steps than it mends. */
    private static final double NEAREST = 0.6;

    /** So many layers for the same water over the highest port as between two; of 0.3 to 1 it errs least on tanks of all heights. */
    private static final double ABOVE = 0.4;

    private LayerCuts() {}

    /**
     * Shares of the water below each cut.
     *
     * @param layers how many layers
     * @param ports shares of the water below the ports, the one that matters most first
     * @return one more than layers, from 0 to 1
     */
    static double[] atPorts(int layers, double... ports) {
        double highest = Arrays.stream(ports).max().orElse(1);
        double nearest = NEAREST * (highest + ABOVE * (1 - highest)) / layers;
        List<Double> ends = new ArrayList<>(List.of(0.0, 1.0));
        for (double port : ports) {
            boolean apart = ends.stream().allMatch(end -> Math.abs(end - port) >= nearest);
            if (apart && port > 0 && port < 1 && ends.size() <= layers) {
                ends.add(port);
            }
        }
        ends.sort(null);
        int[] counts = counts(layers, ends, highest - nearest);
        double[] cuts = new double[layers + 1];
        int at = 0;
        for (int i = 0; i < counts.length; i++) {
            double low = ends.get(i);
            double each = (ends.get(i + 1) - low) / counts[i];
            for (int k = 0; k < counts[i]; k++) {
                cuts[at++] = low + k * each;
            }
        }
        cuts[layers] = 1;
        return cuts;
    }

    /** Layers between each two ends, at least one each, as many in all as there are; thicker ones from a share of the water on. */
    private static int[] counts(int layers, List<Double> ends, double thickerFrom) {
        double[] weights = new double[ends.size() - 1];
        for (int i = 0; i < weights.length; i++) {
            double share = ends.get(i + 1) - ends.get(i);
            weights[i] = ends.get(i) > thickerFrom ? ABOVE * share : share;
        }
        double whole = Arrays.stream(weights).sum();
        int[] counts = new int[weights.length];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Math.max(1, (int) Math.round(weights[i] / whole * layers));
        }
        int sum = Arrays.stream(counts).sum();
        while (sum != layers) {
            int widest = 0;
            for (int i = 1; i < counts.length; i++) {
                widest = counts[i] > counts[widest] ? i : widest;
            }
            int step = Integer.signum(layers - sum);
            counts[widest] += step;
            sum += step;
        }
        return counts;
    }
}
