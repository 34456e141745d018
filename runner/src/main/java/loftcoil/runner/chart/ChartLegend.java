package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Names of the curves below the chart, each beside a sample of its line, in as many rows as they need. */
final class ChartLegend {

    private static final int SAMPLE = 34;
    private static final int SPACE = 22;

    private final List<List<Integer>> rows = new ArrayList<>();
    private final ChartOrder order;

    ChartLegend(ChartOrder order) {
        this.order = order;
        double used = Double.POSITIVE_INFINITY;
        for (int i = 0; i < order.curves().size(); i++) {
            double width = width(i);
            if (used + width > ChartFrame.WIDTH - 20) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(i);
            used += width;
        }
    }

    int rows() {
        return rows.size();
    }

    private double width(int i) {
        return SAMPLE + 8 + order.curves().get(i).name().length() * ChartFrame.LETTER + SPACE;
    }

    void draw(Element svg, ChartFrame frame) {
        double y = frame.bottom() + ChartFrame.BELOW + 8;
        for (List<Integer> row : rows) {
            double x = 20;
            for (int i : row) {
                entry(svg, i, x, y);
                x += width(i);
            }
            y += ChartFrame.ROW;
        }
    }

    private void entry(Element svg, int i, double x, double y) {
        Document document = svg.getOwnerDocument();
        CurveStyle style = CurveStyle.at(i);
        ChartOrder.Curve curve = order.curves().get(i);
        if (curve.dots()) {
            svg.appendChild(SvgElement.of(
                    document,
                    "circle",
                    Map.of(
                            "cx", SvgElement.number(x + SAMPLE / 2.0),
                            "cy", SvgElement.number(y - 5),
                            "r", "4",
                            "class", style.fillClass(),
                            "fill", style.colour())));
        } else {
            Element sample = SvgElement.line(
                    document, new double[] {x, y - 5, x + SAMPLE, y - 5}, style.strokeClass(), style.colour());
            sample.setAttribute("stroke-width", "2.4");
            if (!style.dash().isEmpty()) {
                sample.setAttribute("stroke-dasharray", style.dashText());
            }
            svg.appendChild(sample);
        }
        svg.appendChild(SvgElement.text(
                document,
                curve.name(),
                Map.of("x", SvgElement.number(x + SAMPLE + 8), "y", SvgElement.number(y), "class", "lc-ink-fill")));
    }
}
