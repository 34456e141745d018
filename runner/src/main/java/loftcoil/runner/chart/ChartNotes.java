package loftcoil.runner.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Draws what the places of a chart mean: empty stretches shaded with their words, a ring where two curves cross. */
final class ChartNotes {

    private static final int ROOM = 60;
    private static final int BAR = 7;

    /** Ends nearer than this with the same words are told once. */
    private static final int NEAR = 30;

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

    /** A bar across each curve that ends before the axis does, and why, where words find room that no curve runs through. */
    static void ends(Element svg, ChartOrder order, ChartFrame frame) {
        List<ChartPlaces.Stretch> shaded = ChartPlaces.empty(order);
        List<Rectangle2D> taken = new ArrayList<>();
        Set<String> said = new HashSet<>();
        for (ChartPlaces.End end : ChartPlaces.ends(order)) {
            double x = frame.x(end.x());
            double y = frame.y(end.y());
            Element bar = SvgElement.line(
                    svg.getOwnerDocument(), new double[] {x, y - BAR, x, y + BAR}, "lc-ink-stroke", "#1d2329");
            bar.setAttribute("stroke-width", "2.4");
            svg.appendChild(bar);
            boolean shade = shaded.stream().anyMatch(stretch -> stretch.from() == end.x() || stretch.to() == end.x());
            boolean again = !said.add(end.words() + (int) (x / NEAR) + " " + (int) (y / NEAR));
            if (!end.words().isEmpty() && !(shade && end.words().equals(order.empty())) && !again) {
                say(svg, order, frame, end, taken);
            }
        }
    }

    private static void say(
            Element svg, ChartOrder order, ChartFrame frame, ChartPlaces.End end, List<Rectangle2D> taken) {
        place(order, frame, end, taken).ifPresent(box -> {
            taken.add(box);
            svg.appendChild(SvgElement.text(
                    svg.getOwnerDocument(),
                    end.words(),
                    Map.of(
                            "x",
                            SvgElement.number(box.getX()),
                            "y",
                            SvgElement.number(box.getMaxY() - 5),
                            "class",
                            "lc-ink-fill")));
        });
    }

    /** The nearest place for the words of an end within the plotting area. */
    private static Optional<Rectangle2D> place(
            ChartOrder order, ChartFrame frame, ChartPlaces.End end, List<Rectangle2D> taken) {
        double width = end.words().length() * ChartFrame.LETTER;
        double x = frame.x(end.x());
        double y = frame.y(end.y());
        for (double down : new double[] {0, -22, 22, -44, 44, -66, 66, -88, 88}) {
            for (double left :
                    new double[] {end.first() ? x - width - 6 : x + 6, end.first() ? x + 8 : x - width - 8}) {
                Rectangle2D box = new Rectangle2D.Double(left, y + down - 10, width, 20);
                boolean inside = box.getX() >= frame.left()
                        && box.getMaxX() <= frame.right()
                        && box.getY() >= frame.top()
                        && box.getMaxY() <= frame.bottom();
                if (inside && taken.stream().noneMatch(box::intersects) && !crossed(order, frame, box)) {
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean crossed(ChartOrder order, ChartFrame frame, Rectangle2D box) {
        for (ChartOrder.Curve curve : order.curves()) {
            Points points = Points.of(curve);
            for (int i = 0; i < points.size(); i++) {
                double x = frame.x(points.x(i));
                double y = frame.y(points.y(i));
                boolean on = (i == 0 || curve.dots())
                        ? box.contains(x, y)
                        : box.intersectsLine(frame.x(points.x(i - 1)), frame.y(points.y(i - 1)), x, y);
                if (on) {
                    return true;
                }
            }
        }
        return order.marks().stream()
                .mapToDouble(mark -> frame.x(mark.at()))
                .anyMatch(x -> x > box.getX() - 4 && x < box.getMaxX() + 4);
    }

    /** A ring where two curves cross, and what that means; none where the chart does not say it. */
    static void crossings(Element svg, ChartOrder order, ChartFrame frame) {
        if (order.crossing().isEmpty()) {
            return;
        }
        List<Rectangle2D> taken = new ArrayList<>();
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
            say(
                    svg,
                    order,
                    frame,
                    new ChartPlaces.End(crossing.one(), crossing.x(), crossing.y(), false, order.crossing()),
                    taken);
        }
    }
}
