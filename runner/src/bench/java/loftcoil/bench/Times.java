package loftcoil.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Times of one kind, in milliseconds. */
final class Times {

    private static final int PERCENT = 100;

    private final String what;
    private final List<Double> millis = new ArrayList<>();

    Times(String what) {
        this.what = what;
    }

    void add(double time) {
        millis.add(time);
    }

    double median() {
        return middle(millis);
    }

    static double middle(List<Double> values) {
        return at(values, PERCENT / 2);
    }

    private static double at(List<Double> values, int percent) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get(Math.min(sorted.size() - 1, sorted.size() * percent / PERCENT));
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%-26s median %7.1f ms   5th %7.1f   95th percentile %7.1f   (%d)",
                what,
                median(),
                at(millis, 5),
                at(millis, 95),
                millis.size());
    }
}
