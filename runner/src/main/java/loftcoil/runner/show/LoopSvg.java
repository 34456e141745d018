package loftcoil.runner.show;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;

/**
 * The loop in elevation as SVG, to one scale both ways. Colours are classes with plain fallbacks, so that a page can restyle
 * them and the drawing still stands alone; cold, coil and hot differ by dash as well as by colour.
 */
final class LoopSvg {

    private static final double PX_PER_M = 120;
    private static final double MARGIN = 26;
    private static final double LABELS_WIDTH = 218;
    private static final double LINE_APART = 25;
    /** Baseline of a label from the end of its line. */
    private static final double BESIDE_LINE = 7;

    private final Drawing drawing;
    private final double height;
    private final StringBuilder svg = new StringBuilder();

    private LoopSvg(Drawing drawing) {
        this.drawing = drawing;
        this.height = (drawing.bounds().topM() - drawing.bounds().bottomM()) * PX_PER_M + 2 * MARGIN;
    }

    /** The picture of a drawing. */
    static View.Picture picture(String title, Drawing drawing) {
        List<List<String>> rows = DrawingWords.levelsDown(drawing).stream()
                .map(level -> List.of(level.label(), metres(level.heightM())))
                .toList();
        return new View.Picture(
                title,
                new LoopSvg(drawing).write(title, says(drawing)),
                says(drawing),
                List.of("level", "above the floor [m]"),
                rows);
    }

    private static String says(Drawing drawing) {
        String levels = drawing.levels().stream()
                .sorted(Comparator.comparingDouble(Drawing.Level::heightM))
                .map(level -> level.label() + " " + metres(level.heightM()) + " m")
                .collect(Collectors.joining(", "));
        return "The loop seen from the side, to scale. Round from the tank: "
                + DrawingWords.roundFromTank(drawing) + ". Heights above the floor: "
                + levels + ".";
    }

    private String write(String title, String says) {
        double width = (drawing.bounds().rightM() - drawing.bounds().leftM()) * PX_PER_M + 2 * MARGIN + LABELS_WIDTH;
        List<Drawing.Level> down = DrawingWords.levelsDown(drawing);
        List<Double> wanted = down.stream().map(level -> y(level.heightM())).toList();
        List<Double> placed = LevelLabels.spread(wanted, LINE_APART);
        // Labels of a low loop spread further than the loop itself.
        double top = Math.min(0, placed.get(0) - LINE_APART);
        double bottom = Math.max(height, placed.get(placed.size() - 1) + LINE_APART);
        svg.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 %.0f %.0f %.0f\" role=\"img\" class=\"lc-drawing\""
                        + " font-family=\"system-ui, sans-serif\" font-size=\"22\" fill=\"none\">",
                top, width, bottom - top));
        svg.append("<title>").append(escaped(title)).append("</title>");
        svg.append("<desc>").append(escaped(says)).append("</desc>");
        floor(width - LABELS_WIDTH - 14);
        levels(width - LABELS_WIDTH, down, placed);
        tank();
        drawing.pipes().forEach(this::pipe);
        drawing.ports().forEach(this::port);
        return svg.append("</svg>").toString();
    }

    private void floor(double width) {
        svg.append(format(
                "<path d=\"M0 %.1fH%.1f\" class=\"lc-ink-stroke\" stroke=\"#1d2a30\" stroke-width=\"2\"/>",
                y(0), width));
    }

    private void levels(double edge, List<Drawing.Level> down, List<Double> placed) {
        for (int i = 0; i < down.size(); i++) {
            svg.append(format(
                    "<path d=\"M%.1f %.1fH%.1fL%.1f %.1f\" class=\"lc-level-stroke\" stroke=\"#8a979d\" stroke-width=\"1\""
                            + " stroke-dasharray=\"2 4\"/>",
                    MARGIN / 2, y(down.get(i).heightM()), edge - 14, edge, placed.get(i)));
            svg.append(format(
                    "<text x=\"%.1f\" y=\"%.1f\" class=\"lc-ink-fill\" fill=\"#1d2a30\">%s m %s</text>",
                    edge + 4,
                    placed.get(i) + BESIDE_LINE,
                    metres(down.get(i).heightM()),
                    escaped(down.get(i).label())));
        }
    }

    private void tank() {
        Drawing.TankBox tank = drawing.tank();
        svg.append(format(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" class=\"lc-water-fill\" fill=\"#d5e6ec\"/>",
                x(tank.leftM()),
                y(tank.waterlineM()),
                tank.widthM() * PX_PER_M,
                (tank.waterlineM() - tank.baseM()) * PX_PER_M));
        svg.append(format(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"6\" class=\"lc-ink-stroke\""
                        + " stroke=\"#1d2a30\" stroke-width=\"2.5\"/>",
                x(tank.leftM()),
                y(tank.baseM() + tank.heightM()),
                tank.widthM() * PX_PER_M,
                tank.heightM() * PX_PER_M));
        svg.append(format(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"15\" class=\"lc-ink-fill\" fill=\"#1d2a30\">tank</text>",
                x(tank.leftM() + tank.widthM() / 2), y(tank.baseM() + tank.heightM() / 4)));
    }

    private void pipe(Drawing.Line line) {
        String points = line.points().stream()
                .map(p -> format("%.1f %.1f", x(p.xM()), y(p.yM())))
                .collect(Collectors.joining("L", "M", ""));
        String look =
                switch (line.role()) {
                    case COLD ->
                        "class=\"lc-cold-stroke\" stroke=\"#1f6f9f\" stroke-width=\"5\" stroke-dasharray=\"16 4\" stroke-linecap=\"butt\"";
                    case COIL ->
                        "class=\"lc-coil-stroke\" stroke=\"#8a4b12\" stroke-width=\"7\" stroke-linecap=\"round\"";
                    case HOT ->
                        "class=\"lc-hot-stroke\" stroke=\"#b3301c\" stroke-width=\"5\" stroke-linecap=\"round\"";
                };
        svg.append(format(
                "<path d=\"%s\" %s stroke-linejoin=\"round\"><title>%s</title></path>",
                points, look, escaped(line.name())));
    }

    private void port(Drawing.Port port) {
        svg.append(format(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" class=\"lc-port\" fill=\"#ffffff\" stroke=\"#1d2a30\""
                        + " stroke-width=\"2\"><title>%s</title></circle>",
                x(port.at().xM()), y(port.at().yM()), escaped(port.label())));
    }

    private double x(double metres) {
        return (metres - drawing.bounds().leftM()) * PX_PER_M + MARGIN;
    }

    private double y(double metres) {
        return height - MARGIN - (metres - drawing.bounds().bottomM()) * PX_PER_M;
    }

    private static String metres(double value) {
        return format("%.2f", value);
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
