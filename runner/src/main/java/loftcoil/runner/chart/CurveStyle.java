package loftcoil.runner.chart;

import java.util.List;

/**
 * How curves differ: by colour, and by dash for those who do not see the colour. The colours are the first of the
 * Okabe–Ito palette, darkened where they are thin on white.
 *
 * @param number which curve, from 1; also the number in its class name
 * @param colour its colour on white, as {@code #rrggbb}
 * @param dash its dashes in chart units; empty for a full line
 */
record CurveStyle(int number, String colour, List<Float> dash) {

    private static final List<CurveStyle> STYLES = List.of(
            new CurveStyle(1, "#0072b2", List.of()),
            new CurveStyle(2, "#c24e00", List.of(9f, 4f)),
            new CurveStyle(3, "#00805c", List.of(2.5f, 3.5f)),
            new CurveStyle(4, "#a03a78", List.of(12f, 4f, 2.5f, 4f)),
            new CurveStyle(5, "#6b5b00", List.of(5f, 5f)),
            new CurveStyle(6, "#333333", List.of(14f, 5f)));

    /** The style of the curve at an index from 0; they repeat after six. */
    static CurveStyle at(int index) {
        return STYLES.get(index % STYLES.size());
    }

    String strokeClass() {
        return "lc-curve-" + number + "-stroke";
    }

    String fillClass() {
        return "lc-curve-" + number + "-fill";
    }

    /** The dashes as SVG writes them; empty for a full line. */
    String dashText() {
        return String.join(" ", dash.stream().map(SvgElement::number).toList());
    }
}
