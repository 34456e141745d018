package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.DrawingChange;
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

    /** Which way an arrow to the north points, each an eighth of a turn further to the right. */
    private static final List<String> PAPER = List.of(
            "up", "up and to the right", "to the right", "down and to the right", "down", "down and to the left",
            "to the left", "up and to the left");

    private final Drawing drawing;
    private final Bounds bounds;
    private final double perM;
    private final char[][] signs;

    private HouseText(Drawing drawing, Bounds bounds, int widest, int highest) {
        this.drawing = drawing;
        this.bounds = bounds;
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
        return new HouseText(drawing, drawing.bounds(), HOUSE, HIGHEST).lines(speak);
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
        return new HouseText(drawing, drawing.bounds(), widest, highest(rows)).lines(speak);
    }

    private static int highest(int rows) {
        return rows <= 0 ? HIGHEST : Math.max(LEAST_ROWS, Math.min(HIGHEST, rows - BELOW));
    }

    /**
     * The house from above as lines, and which way each run leads.
     *
     * @param speak how a measure is written
     */
    public static List<String> plan(Drawing drawing, Function<Measure, String> speak) {
        return new HouseText(drawing, drawing.plan().walls(), HOUSE, HIGHEST).planned(speak);
    }

    /** The same as lines that a screen can hold; as {@link #of(Drawing, Function, int, int)}. */
    public static List<String> plan(Drawing drawing, Function<Measure, String> speak, int columns, int rows) {
        int widest = Math.max(LEAST_COLUMNS, Math.min(HOUSE, columns));
        return new HouseText(drawing, drawing.plan().walls(), widest, highest(rows)).planned(speak);
    }

    private List<String> planned(Function<Measure, String> speak) {
        Drawing.Plan plan = drawing.plan();
        box(plan.walls(), '.');
        box(plan.heater(), '#');
        draw(around(plan.tank()), '#');
        plan.panes().ifPresent(panes -> {
            draw(around(panes.corners()), '%');
            draw(List.of(panes.middle(), panes.ahead()), '>');
        });
        box(plan.flue(), '|');
        for (Drawing.PlanRun run : plan.runs()) {
            draw(run.pipe().points(), sign(run.pipe().role()));
        }
        plan.ports().forEach(port -> put(port.at(), 'o'));
        List<String> lines = new ArrayList<>();
        lines.add("seen from above"
                + plan.northDeg().stream()
                        .mapToObj(deg -> ", north is " + PAPER.get((int) Math.round(deg / 45 + 8) % 8))
                        .findFirst()
                        .orElse(""));
        for (char[] row : signs) {
            lines.add(new String(row).stripTrailing());
        }
        lines.addAll(DrawingWords.plan(plan, speak));
        plan.panes().ifPresent(panes -> lines.add("> panes face " + DrawingWords.direction(panes.azimuthDeg())));
        return lines;
    }

    /** A rebuild in one frame, in signs, and in words below: k what is kept, x what is cut out, + what is added. */
    public static List<String> change(DrawingChange change) {
        HouseText text = new HouseText(change.after(), ChangeSvg.frame(change), HOUSE, HIGHEST);
        text.draw(change.after().house().frame(), '.');
        text.box(change.after().house().heater(), '#');
        for (DrawingChange.Item item : change.items()) {
            text.draw(
                    item.shut() ? around(item.points()) : item.points(),
                    switch (item.fate()) {
                        case KEPT -> 'k';
                        case CUT_OUT -> 'x';
                        case ADDED -> '+';
                    });
        }
        List<String> lines = new ArrayList<>();
        for (char[] row : text.signs) {
            lines.add(new String(row).stripTrailing());
        }
        lines.add("k kept, x cut out, + added, # heater; to scale, but walls and roof are a frame");
        lines.addAll(ChangeSvg.says(change));
        return lines;
    }

    private static List<Point> around(List<Point> corners) {
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        return closed;
    }

    private static char sign(Drawing.Role role) {
        return switch (role) {
            case COLD -> 'c';
            case COIL -> 'f';
            case HOT -> 'h';
            case TAP -> 't';
        };
    }

    private List<String> lines(Function<Measure, String> speak) {
        draw(drawing.house().frame(), '.');
        drawing.house().panes().ifPresent(panes -> draw(List.of(panes.upper(), panes.lower()), '%'));
        Bounds flue = drawing.house().flue().pipe();
        draw(List.of(new Point(flue.leftM(), flue.bottomM()), new Point(flue.leftM(), flue.topM())), '|');
        draw(List.of(new Point(flue.rightM(), flue.bottomM()), new Point(flue.rightM(), flue.topM())), '|');
        box(drawing.house().heater(), '#');
        drawing.house().fixtures().forEach(fixture -> draw(fixture.points(), ':'));
        drawing.taps().forEach(pipe -> draw(pipe.points(), 't'));
        Drawing.TankBox tank = drawing.tank();
        box(new Bounds(tank.leftM(), tank.baseM(), tank.rightM(), tank.topM()), '#');
        draw(
                List.of(
                        new Point(tank.leftM() + 1.5 / perM, tank.waterlineM()),
                        new Point(tank.rightM() - 1.5 / perM, tank.waterlineM())),
                '~');
        for (Line pipe : drawing.pipes()) {
            draw(pipe.points(), sign(pipe.role()));
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

    private void box(Bounds of, char sign) {
        draw(
                List.of(
                        new Point(of.leftM(), of.bottomM()),
                        new Point(of.leftM(), of.topM()),
                        new Point(of.rightM(), of.topM()),
                        new Point(of.rightM(), of.bottomM()),
                        new Point(of.leftM(), of.bottomM())),
                sign);
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
        int x = (int) Math.round((at.xM() - bounds.leftM()) * perM);
        int y = row(at.yM());
        if (y >= 0 && y < signs.length && x >= 0 && x < signs[0].length) {
            signs[y][x] = sign;
        }
    }

    private int row(double levelM) {
        return signs.length - 1 - (int) Math.round((levelM - bounds.bottomM()) * perM / TALL);
    }
}
