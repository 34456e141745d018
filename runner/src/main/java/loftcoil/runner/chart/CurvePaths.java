package loftcoil.runner.chart;

import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Writes drawn shapes as SVG. Lines of one curve that continue each other become one path, so that its dashes run on
 * from point to point.
 */
final class CurvePaths {

    private static final int MOST_COORDINATES = 6;

    private final Element group;
    private final Document document;
    private final StringBuilder path = new StringBuilder();
    private int curve = -1;
    private double endX;
    private double endY;

    private CurvePaths(Element group) {
        this.group = group;
        this.document = group.getOwnerDocument();
    }

    /** Adds all shapes to a group, in order. */
    static void add(Iterable<CurveShapes.Drawn> shapes, Element group) {
        CurvePaths paths = new CurvePaths(group);
        for (CurveShapes.Drawn shape : shapes) {
            if (shape.dot()) {
                paths.dot(shape);
            } else {
                paths.line(shape);
            }
        }
        paths.finish();
    }

    private void line(CurveShapes.Drawn drawn) {
        if (drawn.index() != curve) {
            finish();
            curve = drawn.index();
        }
        double[] at = new double[MOST_COORDINATES];
        for (PathIterator part = drawn.shape().getPathIterator(null); !part.isDone(); part.next()) {
            boolean move = part.currentSegment(at) == PathIterator.SEG_MOVETO;
            boolean continues = path.length() > 0 && at[0] == endX && at[1] == endY;
            if (!continues) {
                path.append(move ? "M" : "L").append(SvgElement.number(at[0]));
                path.append(' ').append(SvgElement.number(at[1]));
            }
            endX = at[0];
            endY = at[1];
        }
    }

    private void finish() {
        if (path.length() > 0) {
            CurveStyle style = CurveStyle.at(curve);
            group.appendChild(SvgElement.of(
                    document,
                    "path",
                    Map.of(
                            "class", style.strokeClass(),
                            "stroke", style.colour(),
                            "stroke-dasharray", style.dashText(),
                            "d", path.toString())));
        }
        path.setLength(0);
        curve = -1;
    }

    private void dot(CurveShapes.Drawn drawn) {
        CurveStyle style = CurveStyle.at(drawn.index());
        Rectangle2D around = drawn.shape().getBounds2D();
        group.appendChild(SvgElement.of(
                document,
                "circle",
                Map.of(
                        "cx", SvgElement.number(around.getCenterX()),
                        "cy", SvgElement.number(around.getCenterY()),
                        "r", SvgElement.number(around.getWidth() / 2),
                        "class", style.fillClass(),
                        "fill", style.colour())));
    }
}
