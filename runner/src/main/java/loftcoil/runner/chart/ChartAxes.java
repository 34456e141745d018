package loftcoil.runner.chart;

import java.math.BigDecimal;
import java.util.Map;
import loftcoil.runner.look.Colours;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Grid, zero line, tick numbers, the names of the axes, and marks. */
final class ChartAxes {

    private static final String GRID = Colours.light().of("line");
    private static final String INK = Colours.light().of("ink");
    static final int MARK_ROW = 20;
    private static final String MARK = Colours.light().of("ink");

    private final Element svg;
    private final Document document;
    private final ChartFrame frame;

    ChartAxes(Element svg, ChartFrame frame) {
        this.svg = svg;
        this.document = svg.getOwnerDocument();
        this.frame = frame;
    }

    void draw(ChartOrder order, double nameY) {
        for (BigDecimal tick : frame.up().values()) {
            double y = frame.y(tick.doubleValue());
            boolean zero = tick.signum() == 0;
            line(new double[] {frame.left(), y, frame.right(), y}, zero);
            text(frame.up().text(tick), frame.left() - 8, y + 5, "end");
        }
        for (BigDecimal tick : frame.across().values()) {
            double x = frame.x(tick.doubleValue());
            line(new double[] {x, frame.top(), x, frame.bottom()}, false);
            text(frame.across().text(tick), x, frame.bottom() + 20, "middle");
        }
        // The axis itself stands out where no zero line does.
        line(new double[] {frame.left(), frame.bottom(), frame.right(), frame.bottom()}, true);
        text(
                ChartTable.heading(order.across(), ""),
                (frame.left() + frame.right()) / 2.0,
                frame.bottom() + 44,
                "middle");
        // Above the axis and level, not turned along it: it is read without tilting the head.
        text(ChartTable.heading(order.up(), ""), 8, nameY, "start");
    }

    private void line(double[] ends, boolean strong) {
        Element line =
                SvgElement.line(document, ends, strong ? "lc-ink-stroke" : "lc-grid-stroke", strong ? INK : GRID);
        line.setAttribute("stroke-width", "1");
        svg.appendChild(line);
    }

    private void text(String words, double x, double y, String anchor) {
        svg.appendChild(SvgElement.text(
                document,
                words,
                Map.of(
                        "x",
                        SvgElement.number(x),
                        "y",
                        SvgElement.number(y),
                        "text-anchor",
                        anchor,
                        "class",
                        "lc-ink-fill")));
    }

    /** The marks of an order: vertical lines, each with its words on a row above the plotting area so that none covers a curve. */
    void marks(ChartOrder order) {
        int row = 0;
        for (ChartOrder.Mark mark : order.marks()) {
            double x = frame.x(mark.at());
            double y = frame.top() - 18 - MARK_ROW * (order.marks().size() - 1.0 - row);
            Element line =
                    SvgElement.line(document, new double[] {x, y + 4, x, frame.bottom()}, "lc-mark-stroke", MARK);
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
                            MARK)));
            row++;
        }
    }
}
