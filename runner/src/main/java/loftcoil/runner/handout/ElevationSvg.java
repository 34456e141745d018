package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.words.Measure;
import loftcoil.runner.show.DrawingWords;
import loftcoil.runner.show.LevelLabels;

/**
 * The loop in elevation for paper: one unit of the drawing is one millimetre on paper, so that a scale rule can be laid on it.
 * Colours are attributes with classes beside them, so that it stands alone and a screen can restyle it.
 */
final class ElevationSvg {

    private static final double MARGIN_MM = 6;
    static final double LABELS_MM = 50;
    private static final double LINE_APART_MM = 4.6;
    private static final double BELOW_MM = 9;
    private static final double MARK_RADIUS_MM = 2.7;
    /** A leg that runs level for more than this share of its length has its slope written beside it. */
    private static final double SLOPED_SHARE = 0.7;
    /** Width of a letter of the drawing, on the wide side, mm. */
    private static final double LETTER_MM = 1.85;

    private final Drawing drawing;
    private final MeasureText measures;
    private final DrawingScale scale;
    private final double widthMm;
    private final double heightMm;
    private final StringBuilder svg = new StringBuilder();

    private ElevationSvg(Drawing drawing, MeasureText measures, DrawingScale scale) {
        this.drawing = drawing;
        this.measures = measures;
        this.scale = scale;
        Drawing.Bounds bounds = drawing.bounds();
        this.widthMm = scale.onPaperMm(bounds.rightM() - bounds.leftM()) + 2 * MARGIN_MM;
        this.heightMm = scale.onPaperMm(bounds.topM() - bounds.bottomM()) + 2 * MARGIN_MM;
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
        List<Drawing.Level> down = DrawingWords.levelsDown(drawing);
        List<Double> placed = LevelLabels.spread(
                down.stream().map(level -> y(level.heightM())).toList(), LINE_APART_MM);
        double top = Math.min(0, placed.get(0) - LINE_APART_MM);
        List<String> listed = slopesWithoutRoom(marks);
        double foot = Math.max(heightMm, placed.get(placed.size() - 1) + LINE_APART_MM) + BELOW_MM;
        double bottom = foot + listed.size() * LINE_APART_MM;
        double right = widthMm + LABELS_MM;
        svg.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"elevation\" viewBox=\"0 %.1f %.1f %.1f\" width=\"%.1fmm\""
                        + " height=\"%.1fmm\" style=\"width: %.1fmm; height: %.1fmm\" role=\"img\""
                        + " font-family=\"Sheet Sans, system-ui, sans-serif\" font-size=\"3.4\" fill=\"none\">",
                top, right, bottom - top, right, bottom - top, right, bottom - top));
        svg.append(Html.element("title", "The loop in elevation, to scale"));
        svg.append(Html.element("desc", Html.text(says())));
        svg.append(format(
                "<path d=\"M0 %.2fH%.2f\" class=\"ink-line\" stroke=\"#1d1d1b\" stroke-width=\"0.5\"/>",
                y(0), widthMm));
        levels(down, placed);
        tank();
        drawing.pipes().forEach(this::pipe);
        drawing.ports().forEach(this::port);
        for (int i = 0; i < drawing.pipes().size(); i++) {
            mark(drawing.pipes().get(i), marks.get(i));
        }
        scaleBar(foot - BELOW_MM + 3);
        for (int i = 0; i < listed.size(); i++) {
            words(MARGIN_MM, foot + (i + 0.7) * LINE_APART_MM, "start", listed.get(i));
        }
        return svg.append("</svg>\n").toString();
    }

    private String says() {
        String levels = drawing.levels().stream()
                .map(level -> level.label() + " " + measures.of(Measure.metres(level.heightM())))
                .collect(Collectors.joining(", "));
        return "Scale " + scale.words() + ". Round from the tank: " + DrawingWords.roundFromTank(drawing)
                + ". Above the floor: " + levels + ".";
    }

    private void levels(List<Drawing.Level> down, List<Double> placed) {
        for (int i = 0; i < down.size(); i++) {
            double level = y(down.get(i).heightM());
            // The floor has its own line and needs only the end of this one.
            double from = down.get(i).heightM() == 0 ? widthMm - 3 : MARGIN_MM / 2;
            svg.append(format(
                    "<path d=\"M%.2f %.2fH%.2fL%.2f %.2f\" class=\"soft-line\" stroke=\"#77776f\" stroke-width=\"0.2\""
                            + " stroke-dasharray=\"0.8 1.2\"/>",
                    from, level, widthMm - 3, widthMm + 1, placed.get(i)));
            words(
                    widthMm + 2,
                    placed.get(i) + 1.2,
                    "start",
                    measures.of(Measure.metres(down.get(i).heightM())) + "  "
                            + down.get(i).label());
        }
    }

    private void tank() {
        Drawing.TankBox tank = drawing.tank();
        double left = x(tank.leftM());
        double width = scale.onPaperMm(tank.widthM());
        svg.append(format(
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" class=\"water\" fill=\"#dbe8ef\"/>",
                left, y(tank.waterlineM()), width, scale.onPaperMm(tank.waterlineM() - tank.baseM())));
        svg.append(format(
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" class=\"ink-line\" stroke=\"#1d1d1b\""
                        + " stroke-width=\"0.5\"/>",
                left, y(tank.baseM() + tank.heightM()), width, scale.onPaperMm(tank.heightM())));
        words(left + width / 2, y(tank.baseM() + tank.heightM() * 0.55), "middle", "tank");
    }

    private void pipe(Line line) {
        String points = line.points().stream()
                .map(p -> format("%.2f %.2f", x(p.xM()), y(p.yM())))
                .collect(Collectors.joining("L", "M", ""));
        String look =
                switch (line.role()) {
                    case COLD ->
                        "class=\"cold\" stroke=\"#1a5f96\" stroke-width=\"1\" stroke-dasharray=\"3.2 0.9\" stroke-linecap=\"butt\"";
                    case COIL -> "class=\"coil\" stroke=\"#84480f\" stroke-width=\"1.5\" stroke-linecap=\"round\"";
                    case HOT -> "class=\"hot\" stroke=\"#ad2c18\" stroke-width=\"1\" stroke-linecap=\"round\"";
                };
        svg.append(format("<path d=\"%s\" %s stroke-linejoin=\"round\"/>", points, look));
    }

    private void port(Drawing.Port port) {
        svg.append(format(
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"1.1\" class=\"port\" fill=\"#ffffff\" stroke=\"#1d1d1b\" stroke-width=\"0.4\"/>",
                x(port.at().xM()), y(port.at().yM())));
    }

    /** The pipe's short name on its middle, and along it its slope where it lies rather than stands and there is room. */
    private void mark(Line line, String mark) {
        double x = (x(start(line).xM()) + x(end(line).xM())) / 2;
        double y = (y(start(line).yM()) + y(end(line).yM())) / 2;
        svg.append(format(
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" class=\"port\" fill=\"#ffffff\" stroke=\"#1d1d1b\" stroke-width=\"0.3\"/>",
                x, y, MARK_RADIUS_MM));
        words(x, y + 1.15, "middle", mark);
        if (lies(line) && hasRoom(line)) {
            svg.append(format(
                    "<text x=\"%.2f\" y=\"%.2f\" transform=\"rotate(%.2f %.2f %.2f)\" text-anchor=\"middle\" class=\"ink\""
                            + " fill=\"#1d1d1b\">%s</text>",
                    x, y - MARK_RADIUS_MM - 1, alongDeg(line), x, y, Html.text(slope(line))));
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
        double lean = Math.atan2(
                y(end(line).yM()) - y(start(line).yM()),
                x(end(line).xM()) - x(start(line).xM()));
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
        double length = unit > widthMm - 2 * MARGIN_MM ? unit / 2 : unit;
        double half = length == unit ? 1 : 0.5;
        String name = feet ? (half == 1 ? "1 ft" : "6 in") : (half == 1 ? "1 m" : "0.5 m");
        svg.append(format(
                "<path d=\"M%.2f %.2fv2h%.3fv-2\" class=\"ink-line\" stroke=\"#1d1d1b\" stroke-width=\"0.4\"/>",
                MARGIN_MM, y, length));
        words(MARGIN_MM + length + 2, y + 2.4, "start", name + " at " + scale.words() + ", printed at full size");
    }

    private void words(double x, double y, String anchor, String words) {
        svg.append(format(
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\" class=\"ink\" fill=\"#1d1d1b\">%s</text>",
                x, y, anchor, Html.text(words)));
    }

    private double x(double metres) {
        return scale.onPaperMm(metres - drawing.bounds().leftM()) + MARGIN_MM;
    }

    private double y(double metres) {
        return heightMm - MARGIN_MM - scale.onPaperMm(metres - drawing.bounds().bottomM());
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
