package loftcoil.runner.chart;

import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws what the places of a chart mean: empty stretches shaded with their words, a ring where two curves cross. */
final class ChartNotes {

    private static final int ROOM = 60;

    private ChartNotes() {}

    static void shade(Element svg, ChartOrder order, ChartFrame frame) {
        Document document = svg.getOwnerDocument();
        boolean said = false;
        for (ChartPlaces.Stretch stretch : ChartPlaces.empty(order)) {
            double from = frame.x(stretch.from());
            double width = frame.x(stretch.to()) - from;
            svg.appendChild(SvgElement.of(
                    document,
                    "rect",
                    Map.of(
                            "x",
                            SvgElement.number(from),
                            "y",
                            "" + frame.top(),
                            "width",
                            SvgElement.number(width),
                            "height",
                            "" + ChartFrame.PLOT_HEIGHT,
                            "class",
                            "lc-ink-fill",
                            "fill-opacity",
                            "0.07")));
            if (!said && width >= ROOM) {
                words(svg, order.empty(), from, width, frame);
                said = true;
            }
        }
    }

    /** One word a line where the stretch is narrow, so that none reaches over its edge. */
    private static void words(Element svg, String words, double from, double width, ChartFrame frame) {
        boolean whole = words.length() * ChartFrame.LETTER < width;
        double y = frame.top() + 24;
        for (String line : whole ? new String[] {words} : words.split(" ")) {
            svg.appendChild(SvgElement.text(
                    svg.getOwnerDocument(),
                    line,
                    Map.of(
                            "x",
                            SvgElement.number(from + width / 2),
                            "y",
                            SvgElement.number(y),
                            "text-anchor",
                            "middle",
                            "class",
                            "lc-ink-fill")));
            y += ChartFrame.ROW;
        }
    }

    static void crossings(Element svg, ChartOrder order, ChartFrame frame) {
        for (ChartPlaces.Crossing crossing : ChartPlaces.crossings(order)) {
            Element ring = SvgElement.of(
                    svg.getOwnerDocument(),
                    "circle",
                    Map.of(
                            "cx", SvgElement.number(frame.x(crossing.x())),
                            "cy", SvgElement.number(frame.y(crossing.y())),
                            "r", "7",
                            "fill", "none",
                            "stroke", "#1d2329",
                            "class", "lc-ink-stroke lc-crossing"));
            ring.setAttribute("stroke-width", "1.8");
            svg.appendChild(ring);
        }
    }
}
