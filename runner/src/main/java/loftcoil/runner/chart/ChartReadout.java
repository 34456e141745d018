package loftcoil.runner.chart;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The values of a chart for a page that shows them under a pointer: each position with its place and, of every curve, the
 * place and the words. The numbers are words already, in the units of the axes.
 */
final class ChartReadout {

    /** More positions than this are closer together than a pointer can tell. */
    private static final int MOST = 400;

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private ChartReadout() {}

    /** On one line, as {@code {"top", "bottom", "name", "empty", "curves": […], "at": [[x, words, [y, words] or 0 …] …]}}. */
    static String of(ChartOrder order, ChartFrame frame) {
        ObjectNode all = MAPPER.createObjectNode();
        all.put("top", frame.top());
        all.put("bottom", frame.bottom());
        all.put("name", order.across().label());
        all.put("empty", order.empty());
        ArrayNode curves = all.putArray("curves");
        List<Digits> digits = new ArrayList<>();
        for (ChartOrder.Curve curve : order.curves()) {
            curves.add(curve.name());
            digits.add(Digits.forAll(curve.ys()));
        }
        TreeSet<Double> positions = new TreeSet<>();
        order.curves().forEach(curve -> positions.addAll(curve.xs()));
        List<Double> xs = List.copyOf(positions);
        Digits across = Digits.forPositions(xs);
        ArrayNode at = all.putArray("at");
        int stride = Math.max(1, (xs.size() + MOST - 1) / MOST);
        for (int i = 0; i < xs.size(); i += stride) {
            ArrayNode row = at.addArray();
            double x = xs.get(i);
            row.add(rounded(frame.x(x))).add(withUnit(across.text(x), order.across()));
            for (int c = 0; c < order.curves().size(); c++) {
                value(row, order, frame, c, x, digits.get(c));
            }
        }
        return all.toString();
    }

    private static void value(ArrayNode row, ChartOrder order, ChartFrame frame, int c, double x, Digits digits) {
        ChartOrder.Curve curve = order.curves().get(c);
        int at = curve.xs().indexOf(x);
        double y = at < 0 ? Double.NaN : curve.ys().get(at);
        if (Double.isFinite(y)) {
            row.addArray().add(rounded(frame.y(y))).add(withUnit(digits.text(y), order.up()));
        } else if (at < 0) {
            row.addNull();
        } else {
            row.add(0);
        }
    }

    private static String withUnit(String number, ChartOrder.Axis axis) {
        return axis.unit().isEmpty() ? number : number + "\u00a0" + axis.unit();
    }

    private static double rounded(double place) {
        return Math.round(place * 10) / 10.0;
    }
}
