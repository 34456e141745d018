package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import loftcoil.engine.design.Design;
import loftcoil.runner.chart.ChartOrder;

/**
 * What a slider came to at values it has been at, so that a coarse picture of a value between can be shown at once while the whole one
 * is worked out. Only what was computed with the same Java and the same design is drawn from.
 */
final class CoarseCharts {

    private static final int MOST = 40;

    /**
     * What the charts are of.
     *
     * @param lesson name of the lesson
     * @param step name of the snippet
     * @param source its text
     * @param design the learner's design
     */
    record Of(String lesson, String step, String source, Design design) {}

    private Optional<Of> kept = Optional.empty();
    private final NavigableMap<Double, List<ChartOrder>> known = new TreeMap<>();

    /** Takes note of what a value came to; what was computed of anything else is let go. */
    synchronized void keep(Of of, double value, List<ChartOrder> charts) {
        if (!kept.equals(Optional.of(of))) {
            known.clear();
            kept = Optional.of(of);
        }
        known.put(value, charts);
        if (known.size() > MOST) {
            known.remove(near(value));
        }
    }

    /** Lets all go, since names that the Java reads may have changed. */
    synchronized void forget() {
        known.clear();
    }

    /** The other value nearest to one that is known. */
    private double near(double value) {
        Double below = known.lowerKey(value);
        Double above = known.higherKey(value);
        if (below == null || above == null) {
            return below == null ? known.lastKey() : below;
        }
        return value - below < above - value ? below : above;
    }

    /** Charts of a value from those near by: between the two beside it, or of the only one there is; none where there is none. */
    synchronized List<ChartOrder> at(Of of, double value) {
        if (!kept.equals(Optional.of(of)) || known.isEmpty()) {
            return List.of();
        }
        Map.Entry<Double, List<ChartOrder>> below = known.floorEntry(value);
        Map.Entry<Double, List<ChartOrder>> above = known.ceilingEntry(value);
        if (below == null || above == null) {
            return (below == null ? known.firstEntry() : known.lastEntry()).getValue();
        }
        if (below.getKey().equals(above.getKey())) {
            return below.getValue();
        }
        return between(
                below.getValue(), above.getValue(), (value - below.getKey()) / (above.getKey() - below.getKey()));
    }

    private static List<ChartOrder> between(List<ChartOrder> below, List<ChartOrder> above, double part) {
        boolean alike = below.size() == above.size()
                && IntStream.range(0, below.size()).allMatch(i -> alike(below.get(i), above.get(i)));
        if (!alike) {
            return part < 1 - part ? below : above;
        }
        return IntStream.range(0, below.size())
                .mapToObj(i -> between(below.get(i), above.get(i), part))
                .toList();
    }

    /** Whether each point of the one has its fellow in the other. */
    private static boolean alike(ChartOrder one, ChartOrder other) {
        return one.curves().size() == other.curves().size()
                && one.marks().size() == other.marks().size()
                && IntStream.range(0, one.curves().size())
                        .allMatch(i -> one.curves().get(i).xs().size()
                                == other.curves().get(i).xs().size());
    }

    private static ChartOrder between(ChartOrder below, ChartOrder above, double part) {
        ChartOrder near = part < 1 - part ? below : above;
        List<ChartOrder.Curve> curves = new ArrayList<>();
        for (int i = 0; i < near.curves().size(); i++) {
            ChartOrder.Curve one = below.curves().get(i);
            ChartOrder.Curve other = above.curves().get(i);
            curves.add(new ChartOrder.Curve(
                    near.curves().get(i).name(),
                    each(one.xs(), other.xs(), part),
                    each(one.ys(), other.ys(), part),
                    near.curves().get(i).dots(),
                    near.curves().get(i).end()));
        }
        List<ChartOrder.Mark> marks = IntStream.range(0, near.marks().size())
                .mapToObj(i -> new ChartOrder.Mark(
                        between(below.marks().get(i).at(), above.marks().get(i).at(), part),
                        near.marks().get(i).words()))
                .toList();
        return near.with(near.across(), near.up(), curves, marks);
    }

    private static List<Double> each(List<Double> below, List<Double> above, double part) {
        return IntStream.range(0, below.size())
                .mapToObj(i -> between(below.get(i), above.get(i), part))
                .toList();
    }

    /** Of a value that is in one of the two alone, the nearer has the say. */
    private static double between(double below, double above, double part) {
        if (Double.isFinite(below) && Double.isFinite(above)) {
            return below + part * (above - below);
        }
        return part < 1 - part ? below : above;
    }
}
