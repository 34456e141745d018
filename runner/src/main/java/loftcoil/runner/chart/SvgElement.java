package loftcoil.runner.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Makes the elements of a chart's SVG. Numbers have at most one decimal: a tenth of a pixel is not seen. */
final class SvgElement {

    static final String SVG = "http://www.w3.org/2000/svg";

    private SvgElement() {}

    static Element of(Document document, String name, Map<String, String> attributes) {
        Element element = document.createElementNS(SVG, name);
        attributes.forEach((key, value) -> {
            if (!value.isEmpty()) {
                element.setAttribute(key, value);
            }
        });
        return element;
    }

    static Element text(Document document, String words, Map<String, String> attributes) {
        Element element = of(document, "text", attributes);
        element.setTextContent(words);
        return element;
    }

    static Element line(Document document, double[] ends, String kind, String colour) {
        return of(
                document,
                "line",
                Map.of(
                        "x1", number(ends[0]),
                        "y1", number(ends[1]),
                        "x2", number(ends[2]),
                        "y2", number(ends[3]),
                        "class", kind,
                        "stroke", colour));
    }

    /** At most one decimal, and none where it is zero. */
    static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
