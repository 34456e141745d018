package loftcoil.runner.chart;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Takes the curves out of XChart's SVG into ours: knows each by its colour, gives it classes and presentation attributes
 * in place of a style attribute, and rounds its numbers.
 */
final class CurvePaths {

    private static final Pattern TAG = Pattern.compile("(?:stroke|fill):rgb\\((\\d+),(\\d+),7\\)");
    private static final Pattern DECIMAL = Pattern.compile("-?\\d+(?:\\.\\d+)?(?:[eE]-?\\d+)?");

    private CurvePaths() {}

    /** Adds all shapes of the drawing to a group of ours. */
    static void move(Document drawing, Element group) {
        NodeList all = drawing.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element shape = (Element) all.item(i);
            Matcher tag = TAG.matcher(shape.getAttribute("style"));
            if (tag.find()) {
                int index = (Integer.parseInt(tag.group(1)) - 1) * 250 + Integer.parseInt(tag.group(2)) - 1;
                boolean line = shape.getAttribute("style").contains("stroke:rgb");
                group.appendChild(ours(group.getOwnerDocument(), shape, CurveStyle.at(index), line));
            }
        }
    }

    private static Element ours(Document document, Element shape, CurveStyle style, boolean line) {
        Element made = line
                ? SvgElement.of(
                        document,
                        shape.getTagName(),
                        Map.of(
                                "class", style.strokeClass(),
                                "stroke", style.colour(),
                                "stroke-dasharray", style.dashText()))
                : SvgElement.of(
                        document, shape.getTagName(), Map.of("class", style.fillClass(), "fill", style.colour()));
        for (String name : new String[] {"d", "points", "x1", "y1", "x2", "y2", "cx", "cy", "rx", "ry", "r"}) {
            if (shape.hasAttribute(name)) {
                made.setAttribute(name, rounded(shape.getAttribute(name)));
            }
        }
        if (!line) {
            made.setAttribute("stroke", "none");
        }
        return made;
    }

    private static String rounded(String numbers) {
        return DECIMAL.matcher(numbers).replaceAll(found -> SvgElement.number(Double.parseDouble(found.group())));
    }
}
