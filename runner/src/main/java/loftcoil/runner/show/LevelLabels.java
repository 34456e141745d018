package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;

/** Keeps labels beside a drawing from lying on each other. */
public final class LevelLabels {

    private LevelLabels() {}

    /**
     * Places for labels, as near to where they belong as the least distance allows.
     *
     * @param wanted where each belongs, downward, in drawing units, in rising order
     * @param apart least distance of two neighbours, in drawing units
     * @return a place for each, in the same order
     */
    public static List<Double> spread(List<Double> wanted, double apart) {
        List<Double> placed = new ArrayList<>();
        int start = 0;
        while (start < wanted.size()) {
            start = placeCluster(wanted, apart, placed, start);
        }
        return placed;
    }

    /** Places the next label, and joins clusters that touch, each centred on where its labels belong. */
    private static int placeCluster(List<Double> wanted, double apart, List<Double> placed, int next) {
        int from = next;
        double top = wanted.get(next);
        while (from > 0 && placed.get(from - 1) + apart > top) {
            from = clusterStart(placed, apart, from - 1);
            top = centredTop(wanted, apart, from, next);
        }
        while (placed.size() > from) {
            placed.remove(placed.size() - 1);
        }
        for (int i = from; i <= next; i++) {
            placed.add(top + (i - from) * apart);
        }
        return next + 1;
    }

    private static int clusterStart(List<Double> placed, double apart, int member) {
        int from = member;
        while (from > 0 && placed.get(from) - placed.get(from - 1) < apart + 1e-9) {
            from--;
        }
        return from;
    }

    private static double centredTop(List<Double> wanted, double apart, int from, int to) {
        double sum = 0;
        for (int i = from; i <= to; i++) {
            sum += wanted.get(i) - (i - from) * apart;
        }
        return sum / (to - from + 1);
    }
}
