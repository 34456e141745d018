package loftcoil.runner.chart;

import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Vertical lines with words, each word on a row of its own above the plotting area so that none covers a curve. */
final class ChartMarks {

    static final int ROW = 20;
    private static final String COLOUR = "#8a1c1c";

    private ChartMarks() {}

    static void draw(Element svg, ChartOrder order, ChartFrame frame) {
        Document document = svg.getOwnerDocument();
        int row = 0;
        for (ChartOrder.Mark mark : order.marks()) {
            double x = frame.x(mark.at());
            double y = frame.top() - 18 - ROW * (order.marks().size() - 1.0 - row);
            Element line =
                    SvgElement.line(document, new double[] {x, y + 4, x, frame.bottom()}, "lc-mark-stroke", COLOUR);
            line.setAttribute("stroke-width", "1.5");
            svg.appendChild(line);
            boolean leftOf = x > (frame.left() + frame.right()) / 2.0;
            svg.appendChild(SvgElement.text(
                    document,
                    mark.words(),
                    Map.of(
                            "x",
                            SvgElement.number(leftOf ? x - 5 : x + 5),
                            "y",
                            SvgElement.number(y + 8),
                            "text-anchor",
                            leftOf ? "end" : "start",
                            "class",
                            "lc-mark-fill",
                            "fill",
                            COLOUR)));
            row++;
        }
    }
}
