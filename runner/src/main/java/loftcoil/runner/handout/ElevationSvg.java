package loftcoil.runner.handout;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.DrawingWords;
import loftcoil.runner.show.HousePen;
import loftcoil.runner.show.HouseSvg;

/** The house in elevation for paper: one unit of the drawing is one millimetre on paper, so that a scale rule can be laid on it. */
final class ElevationSvg {

    static final double MARGIN_MM = 5;
    static final double LABELS_MM = 48;
    private static final double STROKE_MM = 0.9;
    private static final double LETTERS_MM = 2.9;
    private static final double FOOT_M = 0.3048;

    private ElevationSvg() {}

    /**
     * The drawing as an SVG element.
     *
     * @param pieces what each pipe is cut into, by its mark; empty where nobody asks
     */
    static String of(
            Drawing drawing,
            Optional<Currents> currents,
            Map<String, List<String>> pieces,
            MeasureText measures,
            DrawingScale scale) {
        HouseSvg.Drawn drawn =
                HouseSvg.draw(drawing, currents, Optional.empty(), pen(drawing, pieces, measures, scale));
        return HouseSvg.picture(drawn, sized(drawn), "The house in elevation, to scale", says(drawing, measures, scale))
                + "\n";
    }

    /** The house from above as an SVG element, to the same scale, its left edge that of the elevation. */
    static String plan(Drawing drawing, Optional<Currents> currents, MeasureText measures, DrawingScale scale) {
        HousePen pen = pen(drawing, Map.of(), HousePen.Views.SIDE_OVER_PLAN, measures, scale);
        HouseSvg.Drawn drawn = HouseSvg.plan(drawing, currents, pen);
        String says = "Scale " + scale.words() + ". "
                + String.join("; ", DrawingWords.plan(drawing.plan(), measures::of)) + ".";
        return HouseSvg.picture(drawn, sized(drawn), "The house from above, to scale", says) + "\n";
    }

    /** Attributes of a drawing that is one millimetre for each of its units. */
    static String sized(HouseSvg.Drawn drawn) {
        return String.format(
                Locale.ROOT,
                "class=\"elevation\" width=\"%.1fmm\" height=\"%.1fmm\" style=\"width: %.1fmm; height: %.1fmm\""
                        + " font-family=\"Sheet Sans, system-ui, sans-serif\"",
                drawn.width(),
                drawn.height(),
                drawn.width(),
                drawn.height());
    }

    /** By what is asked of the pieces: where nobody asks, the plan is not drawn either. */
    static HousePen pen(Drawing drawing, Map<String, List<String>> pieces, MeasureText measures, DrawingScale scale) {
        HousePen.Views views = pieces.isEmpty() ? HousePen.Views.SIDE : HousePen.Views.SIDE_OVER_PLAN;
        return pen(drawing, pieces, views, measures, scale);
    }

    private static HousePen pen(
            Drawing drawing,
            Map<String, List<String>> pieces,
            HousePen.Views views,
            MeasureText measures,
            DrawingScale scale) {
        HousePen.Size size = new HousePen.Size(scale.onPaperMm(1), MARGIN_MM, STROKE_MM, LETTERS_MM);
        return new HousePen(size, measures::of, true, pieces, bar(drawing, measures, scale), views);
    }

    /** A bar of whole metres or feet, to be measured on the print. */
    private static HousePen.Bar bar(Drawing drawing, MeasureText measures, DrawingScale scale) {
        boolean feet = measures.units() == Units.US;
        double unitM = feet ? FOOT_M : 1;
        boolean whole = unitM <= drawing.bounds().rightM() - drawing.bounds().leftM();
        String name = feet ? (whole ? "1 ft" : "6 in") : (whole ? "1 m" : "0.5 m");
        return new HousePen.Bar(whole ? unitM : unitM / 2, name + " at " + scale.words() + ", printed at full size");
    }

    private static String says(Drawing drawing, MeasureText measures, DrawingScale scale) {
        String levels = drawing.levels().stream()
                .map(level -> level.label() + " " + measures.of(Measure.metres(level.heightM())))
                .collect(Collectors.joining(", "));
        return "Scale " + scale.words() + ". Round from the tank: " + DrawingWords.roundFromTank(drawing)
                + ". Above the floor: " + levels + ".";
    }
}
