package loftcoil.runner.show;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;
import loftcoil.runner.look.Colours;

/**
 * What every elevation of a loop is drawn with, on the page and on paper, as pieces of SVG to one scale both ways. Colours are
 * classes with plain fallbacks, so that a page can restyle them and the drawing still stands alone; cold, coil and hot differ by
 * dash and width as well as by colour.
 */
public final class LoopShapes {

    private static final String INK = Colours.light().of("ink");

    /** Letters of the tank's name for its width, so that the name leaves room for ports on both sides. */
    private static final double NAME_OF_WIDTH = 0.25;

    private final Drawing drawing;
    private final Pen pen;
    private final List<Drawing.Level> down;
    private final List<Double> labels;
    private final StringBuilder svg = new StringBuilder();

    /**
     * How large a loop is drawn, in units of its picture.
     *
     * @param perM units for each metre of the building
     * @param margin units round the loop
     * @param stroke units of the width of a pipe
     * @param lineApart least units between the baselines of two labels
     * @param letters units of the size of its letters
     */
    public record Pen(double perM, double margin, double stroke, double lineApart, double letters) {}

    /** A loop that is about to be drawn. */
    public LoopShapes(Drawing drawing, Pen pen) {
        this.drawing = drawing;
        this.pen = pen;
        this.down = DrawingWords.levelsDown(drawing);
        this.labels = LevelLabels.spread(
                down.stream().map(level -> y(level.heightM())).toList(), pen.lineApart());
    }

    /** Units from the left edge for a place in the building, m. */
    public double x(double metres) {
        return (metres - drawing.bounds().leftM()) * pen.perM() + pen.margin();
    }

    /** Units from the top for a height above the floor, m. */
    public double y(double metres) {
        return height() - pen.margin() - (metres - drawing.bounds().bottomM()) * pen.perM();
    }

    /** Width of the loop with its margins, units. */
    public double width() {
        return (drawing.bounds().rightM() - drawing.bounds().leftM()) * pen.perM() + 2 * pen.margin();
    }

    /** Height of the loop with its margins, units; labels may need more. */
    public double height() {
        return (drawing.bounds().topM() - drawing.bounds().bottomM()) * pen.perM() + 2 * pen.margin();
    }

    /** Baselines of the labels of the levels, the highest first, none nearer to the next than lines may be. */
    public List<Double> labelsDown() {
        return labels;
    }

    /** The floor as a line of that length. */
    public void floor(double length) {
        add(
                "<path d=\"M0 %.2fH%.2f\" class=\"lc-ink-stroke\" stroke=\"" + INK + "\" stroke-width=\"%.2f\"/>",
                y(0),
                length,
                0.4 * pen.stroke());
    }

    /**
     * The levels as lines to their labels on the right.
     *
     * @param edge where the labels begin
     * @param label what is written of a level
     */
    public void levels(double edge, Function<Drawing.Level, String> label) {
        for (int i = 0; i < down.size(); i++) {
            double level = y(down.get(i).heightM());
            // The floor has its own line and needs only the end of this one.
            double from = down.get(i).heightM() == 0 ? edge - 4 * pen.stroke() : pen.margin() / 2;
            add(
                    "<path d=\"M%.2f %.2fH%.2fL%.2f %.2f\" class=\"lc-level-stroke\" stroke=\""
                            + Colours.light().of("edge") + "\" stroke-width=\"%.2f\""
                            + " stroke-dasharray=\"%.2f %.2f\"/>",
                    from,
                    level,
                    edge - 3 * pen.stroke(),
                    edge,
                    labels.get(i),
                    0.2 * pen.stroke(),
                    0.5 * pen.stroke(),
                    0.8 * pen.stroke());
            words(edge + pen.stroke(), labels.get(i) + pen.letters() / 3, "start", label.apply(down.get(i)));
        }
    }

    /** The tank with its water and its name. */
    public void tank() {
        Drawing.TankBox tank = drawing.tank();
        box(
                tank.waterlineM(),
                tank.waterlineM() - tank.baseM(),
                "class=\"lc-water-fill\" fill=\"" + Colours.light().of("water-ground") + "\"");
        box(
                tank.baseM() + tank.heightM(),
                tank.heightM(),
                String.format(
                        Locale.ROOT,
                        "rx=\"%.2f\" class=\"lc-ink-stroke\" stroke=\"" + INK + "\" stroke-width=\"%.2f\"",
                        pen.stroke(),
                        0.5 * pen.stroke()));
        add(
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"middle\" font-size=\"%.1f\" class=\"lc-ink-fill\" fill=\""
                        + INK + "\">tank</text>",
                x(tank.leftM() + tank.widthM() / 2),
                y(tank.baseM() + tank.heightM() / 4),
                Math.min(pen.letters(), NAME_OF_WIDTH * tank.widthM() * pen.perM()));
    }

    private void box(double topM, double heightM, String look) {
        Drawing.TankBox tank = drawing.tank();
        add(
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" " + look + "/>",
                x(tank.leftM()),
                y(topM),
                tank.widthM() * pen.perM(),
                heightM * pen.perM());
    }

    /** The pipes and the ports. */
    public void pipes() {
        drawing.pipes().forEach(this::pipe);
        for (Drawing.Port port : drawing.ports()) {
            circle(x(port.at().xM()), y(port.at().yM()), pen.stroke(), port.label());
        }
    }

    private void pipe(Drawing.Line line) {
        String points = line.points().stream()
                .map(p -> String.format(Locale.ROOT, "%.2f %.2f", x(p.xM()), y(p.yM())))
                .collect(Collectors.joining("L", "M", ""));
        String look =
                switch (line.role()) {
                    case COLD ->
                        "class=\"lc-cold-stroke\" stroke=\"%s\" stroke-dasharray=\"%.2f %.2f\" stroke-linecap=\"butt\""
                                .formatted(Colours.light().of("warm-0"), 3.2 * pen.stroke(), 0.85 * pen.stroke());
                    case COIL ->
                        "class=\"lc-coil-stroke\" stroke=\"%s\" stroke-linecap=\"round\""
                                .formatted(Colours.light().of("bare"));
                    case HOT ->
                        "class=\"lc-hot-stroke\" stroke=\"%s\" stroke-linecap=\"round\""
                                .formatted(Colours.light().of("warm-5"));
                };
        double width = line.role() == Drawing.Role.COIL ? 1.45 * pen.stroke() : pen.stroke();
        add("<path d=\"" + points + "\" " + look + " stroke-width=\"%.2f\" stroke-linejoin=\"round\"><title>", width);
        svg.append(Html.text(line.name())).append("</title></path>");
    }

    /** A small circle, such as of a port, with what it is for who points at it. */
    public void circle(double x, double y, double radius, String title) {
        add(
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" class=\"lc-port\" fill=\"#ffffff\" stroke=\"" + INK
                        + "\" stroke-width=\"%.2f\"><title>",
                x,
                y,
                radius,
                0.4 * pen.stroke());
        svg.append(Html.text(title)).append("</title></circle>");
    }

    /**
     * Words.
     *
     * @param anchor which part of them stands at that place: start, middle or end
     */
    public void words(double x, double y, String anchor, String words) {
        add(
                "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"" + anchor + "\" class=\"lc-ink-fill\" fill=\"" + INK
                        + "\">",
                x,
                y);
        svg.append(Html.text(words)).append("</text>");
    }

    /** Words about a place, turned round it, degrees clockwise. */
    public void turnedWords(double x, double y, double above, double turnDeg, String words) {
        add(
                "<text x=\"%.2f\" y=\"%.2f\" transform=\"rotate(%.2f %.2f %.2f)\" text-anchor=\"middle\" class=\"lc-ink-fill\" fill=\""
                        + INK + "\">",
                x,
                y - above,
                turnDeg,
                x,
                y);
        svg.append(Html.text(words)).append("</text>");
    }

    /** A piece of SVG with numbers in it. */
    public void add(String form, Object... values) {
        svg.append(String.format(Locale.ROOT, form, values));
    }

    /**
     * The picture.
     *
     * @param attributes attributes of its outermost element, without the look of the letters
     * @param title what it is called
     * @param says the same in words
     */
    public String picture(String attributes, String title, String says) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" fill=\"none\" " + attributes
                + String.format(Locale.ROOT, " font-size=\"%.1f\">", pen.letters()) + "<title>" + Html.text(title)
                + "</title><desc>"
                + Html.text(says) + "</desc>" + svg + "</svg>";
    }
}
