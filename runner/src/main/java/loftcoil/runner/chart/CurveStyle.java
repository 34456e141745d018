package loftcoil.runner.chart;

import java.util.List;
import loftcoil.runner.look.Colours;

/**
 * How curves differ: by colour, and by dash for those who do not see the colour. The colours are those of the style sheet of
 * the look, which are told apart by everybody.
 *
 * @param number which curve, from 1; also the number in its class name
 * @param colour its colour on white, as {@code #rrggbb}
 * @param dash its dashes in chart units; empty for a full line
 */
record CurveStyle(int number, String colour, List<Float> dash) {

    private static final List<CurveStyle> STYLES = List.of(
            style(1, List.of()),
            style(2, List.of(9f, 4f)),
            style(3, List.of(2.5f, 3.5f)),
            style(4, List.of(12f, 4f, 2.5f, 4f)),
            style(5, List.of(5f, 5f)),
            style(6, List.of(14f, 5f)));

    private static CurveStyle style(int number, List<Float> dash) {
        return new CurveStyle(number, Colours.light().of("curve-" + number), dash);
    }

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
