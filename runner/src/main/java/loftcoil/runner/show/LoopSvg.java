package loftcoil.runner.show;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;

/** The loop in elevation for the page, with the heights of its levels also as a table. */
final class LoopSvg {

    private static final LoopShapes.Pen PEN = new LoopShapes.Pen(120, 26, 5, 25, 22);
    private static final double LABELS_WIDTH = 218;

    private LoopSvg() {}

    /** The picture of a drawing. */
    static View.Picture picture(String title, Drawing drawing, Units units) {
        List<List<String>> rows = DrawingWords.levelsDown(drawing).stream()
                .map(level -> List.of(level.label(), height(level, units)))
                .toList();
        String says = says(drawing, units);
        return new View.Picture(
                title, svg(drawing, title, says, units), says, List.of("level", "above the floor"), rows);
    }

    private static String says(Drawing drawing, Units units) {
        String levels = drawing.levels().stream()
                .sorted(Comparator.comparingDouble(Drawing.Level::heightM))
                .map(level -> level.label() + " " + height(level, units))
                .collect(Collectors.joining(", "));
        return "The loop seen from the side, to scale. Round from the tank: "
                + DrawingWords.roundFromTank(drawing) + ". Heights above the floor: "
                + levels + ".";
    }

    private static String svg(Drawing drawing, String title, String says, Units units) {
        LoopShapes shapes = new LoopShapes(drawing, PEN);
        List<Double> labels = shapes.labelsDown();
        // Labels of a low loop spread further than the loop itself.
        double top = Math.min(0, labels.get(0) - PEN.lineApart());
        double bottom = Math.max(shapes.height(), labels.get(labels.size() - 1) + PEN.lineApart());
        shapes.floor(shapes.width() - 3 * PEN.stroke());
        shapes.levels(shapes.width(), level -> height(level, units) + " " + level.label());
        shapes.tank();
        shapes.pipes();
        String attributes = String.format(
                Locale.ROOT,
                "viewBox=\"0 %.0f %.0f %.0f\" class=\"lc-drawing\" font-family=\"system-ui, sans-serif\"",
                top,
                shapes.width() + LABELS_WIDTH,
                bottom - top);
        return shapes.picture(attributes, title, says);
    }

    private static String height(Drawing.Level level, Units units) {
        return units.of(Measure.rounded(level.heightM(), MeasureKind.LENGTH_M, 2));
    }
}
