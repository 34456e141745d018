package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/**
 * The house as lines of plain text, for a terminal: the same drawing as on the page, in signs. A sign is taken to be twice as high as
 * wide. Pipes are drawn with their letter: c cold, h hot, f the coil in the fire, t taps.
 */
public final class HouseText {

    private static final int HOUSE = 46;
    private static final int HIGHEST = 34;
    private static final double TALL = 2;
    /** Smaller than this it is no drawing. */
    private static final int LEAST_COLUMNS = 20;

    private static final int LEAST_ROWS = 12;
    /** Rows for what the signs mean, and for the prompt. */
    private static final int BELOW = 5;

    private static final String BETWEEN = "  ";

    private final Drawing drawing;
    private final double perM;
    private final char[][] signs;

    private HouseText(Drawing drawing, int widest, int highest) {
        this.drawing = drawing;
        Bounds bounds = drawing.bounds();
        double wideM = bounds.rightM() - bounds.leftM();
        double highM = bounds.topM() - bounds.bottomM();
        this.perM = Math.min((widest - 1) / wideM, (highest - 1) * TALL / highM);
        this.signs = new char[(int) Math.ceil(highM * perM / TALL) + 1][(int) Math.ceil(wideM * perM) + 1];
        for (char[] row : signs) {
            Arrays.fill(row, ' ');
        }
    }

    /**
     * The drawing as lines.
     *
     * @param speak how a measure is written
     */
    public static List<String> of(Drawing drawing, Function<Measure, String> speak) {
        return new HouseText(drawing, HOUSE, HIGHEST).lines(speak);
    }

    /**
     * The drawing as lines that a screen can hold, with the words beside it.
     *
     * @param speak how a measure is written
     * @param columns greatest length of a line, in characters
     * @param rows of the screen; 0 where it has no end
     */
    public static List<String> of(Drawing drawing, Function<Measure, String> speak, int columns, int rows) {
        int words = DrawingWords.levelsDown(drawing).stream()
                .mapToInt(level -> label(level, speak).length() + BETWEEN.length())
                .max()
                .orElse(0);
        int widest = Math.max(LEAST_COLUMNS, Math.min(HOUSE, columns - words));
        int highest = rows <= 0 ? HIGHEST : Math.max(LEAST_ROWS, Math.min(HIGHEST, rows - BELOW));
        return new HouseText(drawing, widest, highest).lines(speak);
    }

    private List<String> lines(Function<Measure, String> speak) {
        draw(drawing.house().frame(), '.');
        drawing.house().panes().ifPresent(panes -> draw(List.of(panes.upper(), panes.lower()), '%'));
        Bounds flue = drawing.house().flue().pipe();
        draw(List.of(new Point(flue.leftM(), flue.bottomM()), new Point(flue.leftM(), flue.topM())), '|');
        draw(List.of(new Point(flue.rightM(), flue.bottomM()), new Point(flue.rightM(), flue.topM())), '|');
        box(drawing.house().heater());
        drawing.house().fixtures().forEach(fixture -> draw(fixture.points(), ':'));
        drawing.taps().forEach(pipe -> draw(pipe.points(), 't'));
        Drawing.TankBox tank = drawing.tank();
        box(new Bounds(tank.leftM(), tank.baseM(), tank.rightM(), tank.topM()));
        draw(
                List.of(
                        new Point(tank.leftM() + 1.5 / perM, tank.waterlineM()),
                        new Point(tank.rightM() - 1.5 / perM, tank.waterlineM())),
                '~');
        for (Line pipe : drawing.pipes()) {
            draw(
                    pipe.points(),
                    switch (pipe.role()) {
                        case COLD -> 'c';
                        case COIL -> 'f';
                        case HOT -> 'h';
                        case TAP -> 't';
                    });
        }
        Bounds fire = drawing.house().fire();
        put(new Point((fire.leftM() + fire.rightM()) / 2, fire.bottomM()), '^');
        drawing.ports().forEach(port -> put(port.at(), 'o'));
        for (int x = 0; x < signs[0].length; x++) {
            if (signs[row(0)][x] == ' ') {
                signs[row(0)][x] = '_';
            }
        }
        return labelled(speak);
    }

    private List<String> labelled(Function<Measure, String> speak) {
        List<Drawing.Level> down = DrawingWords.levelsDown(drawing);
        List<Double> wanted =
                down.stream().map(level -> (double) row(level.heightM())).toList();
        List<Double> rows = LevelLabels.spread(wanted, 1);
        int first = (int) Math.min(0, Math.floor(rows.get(0)));
        int last = (int) Math.max(signs.length - 1.0, Math.ceil(rows.get(rows.size() - 1)));
        List<String> lines = new ArrayList<>();
        int next = 0;
        for (int row = first; row <= last || next < down.size(); row++) {
            String house = row >= 0 && row < signs.length ? new String(signs[row]) : "";
            String label = "";
            if (next < down.size() && Math.round(rows.get(next)) <= row) {
                Drawing.Level level = down.get(next);
                label = label(level, speak);
                next++;
            }
            String padded = house + " ".repeat(Math.max(0, signs[0].length - house.length()));
            lines.add((label.isEmpty() ? padded : padded + BETWEEN + label).stripTrailing());
        }
        lines.add(
                "c cold, h hot, f coil in the fire, t taps, o ports, ~ waterline, % panes; to scale, walls and roof as a frame");
        return lines;
    }

    private static String label(Drawing.Level level, Function<Measure, String> speak) {
        return speak.apply(Measure.rounded(level.heightM(), MeasureKind.LENGTH_M, 2)) + " " + level.label();
    }

    private void box(Bounds of) {
        draw(
                List.of(
                        new Point(of.leftM(), of.bottomM()),
                        new Point(of.leftM(), of.topM()),
                        new Point(of.rightM(), of.topM()),
                        new Point(of.rightM(), of.bottomM()),
                        new Point(of.leftM(), of.bottomM())),
                '#');
    }

    private void draw(List<Point> points, char sign) {
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            int steps = (int) Math.ceil(Math.hypot(to.xM() - from.xM(), to.yM() - from.yM()) * perM * 2) + 1;
            for (int k = 0; k <= steps; k++) {
                double share = (double) k / steps;
                put(
                        new Point(from.xM() + share * (to.xM() - from.xM()), from.yM() + share * (to.yM() - from.yM())),
                        sign);
            }
        }
    }

    private void put(Point at, char sign) {
        int x = (int) Math.round((at.xM() - drawing.bounds().leftM()) * perM);
        int y = row(at.yM());
        if (y >= 0 && y < signs.length && x >= 0 && x < signs[0].length) {
            signs[y][x] = sign;
        }
    }

    private int row(double levelM) {
        return signs.length - 1 - (int) Math.round((levelM - drawing.bounds().bottomM()) * perM / TALL);
    }
}
