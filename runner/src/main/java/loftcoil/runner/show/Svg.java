package loftcoil.runner.show;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loftcoil.runner.look.Colours;

/**
 * Pieces of a drawing as SVG. Each carries a class, by which a page colours it, and the colour of the light scheme as an attribute, by
 * which the drawing stands alone and on paper; there are no styles in it.
 */
final class Svg {

    private final StringBuilder svg = new StringBuilder();

    /** What a line or an area looks like: its class, its colour by name, its width; width 0 is an area. */
    record Look(String style, String colour, double width) {
        private String attributes() {
            String value = Colours.light().of(colour);
            return width == 0
                    ? "class=\"" + style + "\" fill=\"" + value + "\""
                    : "class=\"" + style + "\" stroke=\"" + value + "\" stroke-width=\"" + number(width) + "\"";
        }
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        String trimmed = text.replaceFirst("\\.?0+$", "");
        return trimmed.equals("-0") ? "0" : trimmed;
    }

    /** A line through points, each an x and a y. */
    Svg line(List<double[]> points, Look look, String more) {
        String path = points.stream()
                .map(at -> number(at[0]) + " " + number(at[1]))
                .collect(Collectors.joining("L", "M", more.contains("data-shut") ? "Z" : ""));
        svg.append("<path d=\"").append(path).append("\" ").append(look.attributes());
        String rest = more.replace("data-shut", "").strip();
        svg.append(rest.isEmpty() ? "" : " " + rest).append("/>");
        return this;
    }

    Svg box(Placed.Box box, double round, Look look) {
        svg.append("<rect x=\"").append(number(box.left()));
        svg.append("\" y=\"").append(number(box.top()));
        svg.append("\" width=\"").append(number(box.right() - box.left()));
        svg.append("\" height=\"").append(number(box.bottom() - box.top()));
        svg.append(round > 0 ? "\" rx=\"" + number(round) : "").append("\" ");
        svg.append(look.attributes()).append("/>");
        return this;
    }

    /** A circle that is filled with the ground and has a rim, with what it is for who points at it. */
    Svg ring(double x, double y, double radius, double rim, String title) {
        svg.append("<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y));
        svg.append("\" r=\"").append(number(radius));
        svg.append("\" class=\"lc-port\" fill=\"").append(Colours.light().of("paper"));
        svg.append("\" stroke=\"").append(Colours.light().of("ink"));
        svg.append("\" stroke-width=\"").append(number(rim)).append("\"><title>");
        svg.append(Html.text(title)).append("</title></circle>");
        return this;
    }

    Svg words(Placed.At at, String words, double size) {
        svg.append("<text x=\"").append(number(at.x())).append("\" y=\"").append(number(at.y()));
        svg.append("\" text-anchor=\"").append(at.anchor());
        svg.append("\" font-size=\"").append(number(size));
        svg.append("\" class=\"lc-ink-fill\" fill=\"").append(Colours.light().of("ink"));
        svg.append("\">").append(Html.text(words)).append("</text>");
        return this;
    }

    Svg open(String style) {
        svg.append("<g class=\"").append(style).append("\">");
        return this;
    }

    Svg shut() {
        svg.append("</g>");
        return this;
    }

    @Override
    public String toString() {
        return svg.toString();
    }
}
