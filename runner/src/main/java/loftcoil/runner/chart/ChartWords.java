package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.words.Numeral;

/** What a chart says, in sentences: axes, ranges, highest and lowest places, crossings of zero, gaps and marks. */
final class ChartWords {

    private static final int MOST_CROSSINGS = 4;
    private static final int PLACE_DIGITS = 3;

    private ChartWords() {}

    static String of(ChartOrder order) {
        StringBuilder says = new StringBuilder("Chart: ").append(order.title()).append(". ");
        List<Double> xs =
                order.curves().stream().flatMap(curve -> curve.xs().stream()).toList();
        says.append("Across: ").append(axis(order.across())).append(range(xs)).append(". ");
        says.append("Up: ").append(axis(order.up())).append(". ");
        for (ChartOrder.Curve curve : order.curves()) {
            says.append(curve(curve));
        }
        for (ChartPlaces.Crossing crossing : ChartPlaces.crossings(order)) {
            says.append(crossing(order, crossing));
        }
        for (ChartPlaces.End end : ChartPlaces.ends(order)) {
            says.append(end(order, end));
        }
        for (ChartPlaces.Stretch stretch : ChartPlaces.empty(order)) {
            Digits digits = Digits.forAll(List.of(stretch.from(), stretch.to()));
            says.append("From ")
                    .append(digits.text(stretch.from()))
                    .append(" to ")
                    .append(digits.text(stretch.to()))
                    .append(" there is no value: ")
                    .append(order.empty())
                    .append(". ");
        }
        for (ChartOrder.Mark mark : order.marks()) {
            String at = Digits.forAll(List.of(mark.at())).text(mark.at());
            says.append("Marked at ")
                    .append(at)
                    .append(": ")
                    .append(mark.words())
                    .append(". ");
        }
        return says.toString().strip();
    }

    private static String crossing(ChartOrder order, ChartPlaces.Crossing crossing) {
        ChartOrder.Curve one = order.curves().get(crossing.one());
        ChartOrder.Curve other = order.curves().get(crossing.other());
        return capital(one.name()) + " and " + other.name() + " cross at "
                + Numeral.shown(crossing.x(), PLACE_DIGITS) + ", at a value of "
                + Numeral.shown(crossing.y(), PLACE_DIGITS)
                + (order.crossing().isEmpty() ? "" : ": " + order.crossing())
                + ". ";
    }

    private static String end(ChartOrder order, ChartPlaces.End end) {
        return end.words().isEmpty()
                ? ""
                : capital(order.curves().get(end.curve()).name())
                        + (end.first() ? " begins only at " : " ends at ")
                        + Numeral.shown(end.x(), PLACE_DIGITS) + ": " + end.words() + ". ";
    }

    private static String axis(ChartOrder.Axis axis) {
        return axis.unit().isEmpty() ? axis.label() : axis.label() + " in " + axis.unit();
    }

    private static String range(List<Double> values) {
        double low = values.stream().min(Double::compare).orElse(Double.NaN);
        double high = values.stream().max(Double::compare).orElse(Double.NaN);
        Digits digits = Digits.forAll(List.of(low, high));
        return ", from " + digits.text(low) + " to " + digits.text(high);
    }

    private static String curve(ChartOrder.Curve curve) {
        Points points = Points.of(curve);
        String name = capital(curve.name());
        if (points.isEmpty()) {
            return name + ": no values. ";
        }
        Digits x = Digits.forPositions(curve.xs());
        Digits y = Digits.forAll(curve.ys());
        int high = points.highest();
        int low = points.lowest();
        List<String> parts = new ArrayList<>();
        if (points.y(high) == points.y(low)) {
            parts.add(y.text(points.y(high)) + " throughout");
        } else {
            parts.add("highest " + y.text(points.y(high)) + " at " + x.text(points.x(high)));
            parts.add("lowest " + y.text(points.y(low)) + " at " + x.text(points.x(low)));
        }
        List<Double> crossings = curve.dots() ? List.of() : points.crossings();
        for (double at : crossings.subList(0, Math.min(MOST_CROSSINGS, crossings.size()))) {
            parts.add("crosses zero near " + x.text(at));
        }
        int gaps = curve.ys().size() - points.size();
        if (gaps > 0) {
            parts.add(gaps + (gaps == 1 ? " position has" : " positions have") + " no value");
        }
        return name + ": " + String.join("; ", parts) + ". ";
    }

    private static String capital(String name) {
        return name.isEmpty() ? "Curve" : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
