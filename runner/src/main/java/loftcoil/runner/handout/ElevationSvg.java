package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.Units;
import loftcoil.runner.look.Colours;
import loftcoil.runner.show.DrawingWords;
import loftcoil.runner.show.LoopShapes;

/**
 * The loop in elevation for paper: one unit of the drawing is one millimetre on paper, so that a scale rule can be laid on it.
 * Pipes carry their marks, and those that lie their slopes.
 */
final class ElevationSvg {

    private static final double MARGIN_MM = 6;
    static final double LABELS_MM = 50;
    private static final double LINE_APART_MM = 4.6;
    private static final double LETTERS_MM = 3.4;
    private static final double BELOW_MM = 9;
    private static final double MARK_RADIUS_MM = 2.7;
    /** A leg that runs level for more than this share of its length has its slope written beside it. */
    private static final double SLOPED_SHARE = 0.7;
    /** Width of a letter of the drawing, on the wide side, mm. */
    private static final double LETTER_MM = 1.85;

    private final Drawing drawing;
    private final MeasureText measures;
    private final DrawingScale scale;
    private final LoopShapes shapes;

    private ElevationSvg(Drawing drawing, MeasureText measures, DrawingScale scale) {
        this.drawing = drawing;
        this.measures = measures;
        this.scale = scale;
        this.shapes = new LoopShapes(
                drawing, new LoopShapes.Pen(scale.onPaperMm(1), MARGIN_MM, 1, LINE_APART_MM, LETTERS_MM));
    }

    /**
     * The drawing as an SVG element.
     *
     * @param marks short name of each pipe of the drawing, in its order
     */
    static String of(Drawing drawing, List<String> marks, MeasureText measures, DrawingScale scale) {
        return new ElevationSvg(drawing, measures, scale).write(marks);
    }

    private String write(List<String> marks) {
        List<Double> labels = shapes.labelsDown();
        List<String> listed = slopesWithoutRoom(marks);
        double top = Math.min(0, labels.get(0) - LINE_APART_MM);
        double foot = Math.max(shapes.height(), labels.get(labels.size() - 1) + LINE_APART_MM) + BELOW_MM;
        double high = foot + listed.size() * LINE_APART_MM - top;
        double wide = shapes.width() + LABELS_MM;
        shapes.floor(shapes.width());
        shapes.levels(shapes.width() + 1, level -> measures.of(Measure.metres(level.heightM())) + "  " + level.label());
        shapes.tank();
        shapes.pipes();
        for (int i = 0; i < drawing.pipes().size(); i++) {
            mark(drawing.pipes().get(i), marks.get(i));
        }
        scaleBar(foot - BELOW_MM + 3);
        for (int i = 0; i < listed.size(); i++) {
            shapes.words(MARGIN_MM, foot + (i + 0.7) * LINE_APART_MM, "start", listed.get(i));
        }
        String attributes = String.format(
                Locale.ROOT,
                "class=\"elevation\" viewBox=\"0 %.1f %.1f %.1f\" width=\"%.1fmm\" height=\"%.1fmm\""
                        + " style=\"width: %.1fmm; height: %.1fmm\" font-family=\"Sheet Sans, system-ui, sans-serif\"",
                top,
                wide,
                high,
                wide,
                high,
                wide,
                high);
        return shapes.picture(attributes, "The loop in elevation, to scale", says()) + "\n";
    }

    private String says() {
        String levels = drawing.levels().stream()
                .map(level -> level.label() + " " + measures.of(Measure.metres(level.heightM())))
                .collect(Collectors.joining(", "));
        return "Scale " + scale.words() + ". Round from the tank: " + DrawingWords.roundFromTank(drawing)
                + ". Above the floor: " + levels + ".";
    }

    /** The pipe's short name on its middle, and along it its slope where it lies rather than stands and there is room. */
    private void mark(Line line, String mark) {
        double x = (x(start(line)) + x(end(line))) / 2;
        double y = (y(start(line)) + y(end(line))) / 2;
        shapes.circle(x, y, MARK_RADIUS_MM, line.name());
        shapes.words(x, y + LETTERS_MM / 3, "middle", mark);
        if (lies(line) && hasRoom(line)) {
            shapes.turnedWords(x, y, MARK_RADIUS_MM + 1, alongDeg(line), slope(line));
        }
    }

    /** Slopes that would cover their neighbours, each with the mark of its pipe. */
    private List<String> slopesWithoutRoom(List<String> marks) {
        List<String> listed = new ArrayList<>();
        for (int i = 0; i < drawing.pipes().size(); i++) {
            Line line = drawing.pipes().get(i);
            if (lies(line) && !hasRoom(line)) {
                listed.add(marks.get(i) + " " + slope(line));
            }
        }
        return listed;
    }

    private static boolean lies(Line line) {
        Drawing.Run run = line.run();
        return line.role() != Drawing.Role.COIL && run.levelRunM() > SLOPED_SHARE * run.lengthM();
    }

    private boolean hasRoom(Line line) {
        double lengthM = Math.hypot(
                end(line).xM() - start(line).xM(), end(line).yM() - start(line).yM());
        return slope(line).length() * LETTER_MM < scale.onPaperMm(lengthM) - 2 * MARK_RADIUS_MM;
    }

    /** How far the pipe leans on paper, clockwise, so that words along it stand upright. */
    private double alongDeg(Line line) {
        double lean = Math.atan2(y(end(line)) - y(start(line)), x(end(line)) - x(start(line)));
        return Math.toDegrees(Math.atan(Math.tan(lean)));
    }

    private static Point start(Line line) {
        return line.points().get(0);
    }

    private static Point end(Line line) {
        return line.points().get(line.points().size() - 1);
    }

    /** Of the pipe itself: a drawing without room for all of a level run draws it short, and so steeper. */
    private String slope(Line line) {
        return ElevationPart.slope(line.run().levelRunM(), line.run().riseM(), measures);
    }

    /** A bar of whole metres or feet, to be measured on the print. */
    private void scaleBar(double y) {
        boolean feet = measures.units() == Units.US;
        double unit = scale.onPaperMm(feet ? 0.3048 : 1.0);
        double length = unit > shapes.width() - 2 * MARGIN_MM ? unit / 2 : unit;
        double half = length == unit ? 1 : 0.5;
        String name = feet ? (half == 1 ? "1 ft" : "6 in") : (half == 1 ? "1 m" : "0.5 m");
        shapes.add(
                "<path d=\"M%.2f %.2fv2h%.3fv-2\" class=\"lc-ink-stroke\" stroke=\""
                        + Colours.light().of("ink") + "\" stroke-width=\"0.4\"/>",
                MARGIN_MM,
                y,
                length);
        shapes.words(
                MARGIN_MM + length + 2, y + 2.4, "start", name + " at " + scale.words() + ", printed at full size");
    }

    private double x(Point at) {
        return shapes.x(at.xM());
    }

    private double y(Point at) {
        return shapes.y(at.yM());
    }
}
