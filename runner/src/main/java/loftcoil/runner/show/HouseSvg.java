package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.runner.show.Placed.At;
import loftcoil.runner.show.Placed.Box;
import loftcoil.runner.show.Svg.Look;

/**
 * The house in elevation as SVG, to one scale both ways, for page, paper and pictures. What is drawn comes from the engine; here it gets
 * its marks, levels, slopes and words, none of which stands on another: what finds no room on the drawing is listed below it.
 */
public final class HouseSvg {

    private static final String INK = "lc-ink-stroke";
    /** A leg that runs level for more than this share of its length has its slope written beside it. */
    private static final double SLOPED_SHARE = 0.7;

    /** Letters of the longest line below the drawing. */
    private static final int LINE = 44;

    private static final int LONG_LINE = 72;

    /** Half of what a pipe and a wall take across with a little air, strokes. */
    private static final double PIPE_WIDE = 0.7;

    private static final double WALL_WIDE = 1.1;

    private static final double[] ALONG = {0.45, 0.3, 0.7, 0.2, 0.8, 0.55, 0.1, 0.9};

    private final Drawing drawing;
    private final Optional<Ghost> tried;
    private final Optional<Currents> currents;
    private final HousePen pen;
    private final Bounds frame;
    private final double stroke;
    private final double letters;
    private final Placed placed;
    private final List<String> listed = new ArrayList<>();
    private final List<String> drawnShort = new ArrayList<>();
    private final Svg svg = new Svg();
    private final List<Drawing.Level> down;
    private final List<Double> labels;

    /**
     * Another house in the same frame, in outline.
     *
     * @param drawing the house
     * @param words what it is, such as “as tried”
     */
    public record Ghost(Drawing drawing, String words) {}

    /**
     * A drawn house.
     *
     * @param content the pieces of its picture, without its outermost element
     * @param left left edge of the picture, units
     * @param top its top, units
     * @param width its width, units
     * @param height its height, units
     * @param words the boxes of all words: left, top, right, bottom
     */
    public record Drawn(
            String content, double left, double top, double width, double height, List<List<Double>> words) {
        /** Keeps a copy of the boxes. */
        public Drawn {
            words = List.copyOf(words);
        }
    }

    private HouseSvg(Drawing drawing, Optional<Currents> currents, Optional<Ghost> tried, HousePen pen) {
        this.drawing = drawing;
        this.currents = currents;
        this.tried = tried;
        this.pen = pen;
        Bounds both = tried.map(ghost -> ghost.drawing().bounds())
                .map(drawing.bounds()::with)
                .orElse(drawing.bounds());
        this.frame = pen.views() != HousePen.Views.SIDE ? PlanSvg.asWideAs(drawing.plan(), both) : both;
        this.stroke = pen.size().stroke();
        this.letters = pen.size().letters();
        this.placed = new Placed(new Box(0, -letters, width(), height() + letters));
        this.down = DrawingWords.levelsDown(drawing);
        this.labels = LevelLabels.spread(
                down.stream().map(level -> y(level.heightM())).toList(),
                pen.size().lineApart());
    }

    /**
     * Draws a house.
     *
     * @param drawing the house
     * @param currents its water, for colours and marks that move; empty to tell hot from cold alone
     * @param tried another house in the same frame, as a ghost; empty for none
     * @param pen how it is drawn
     */
    public static Drawn draw(Drawing drawing, Optional<Currents> currents, Optional<Ghost> tried, HousePen pen) {
        return new HouseSvg(drawing, currents, tried, pen).all();
    }

    /**
     * Draws a house from above, as a picture of its own.
     *
     * @param drawing the house
     * @param currents its water; empty to tell hot from cold alone
     * @param pen how it is drawn
     */
    public static Drawn plan(Drawing drawing, Optional<Currents> currents, HousePen pen) {
        Svg svg = new Svg();
        PlanSvg plan =
                new PlanSvg(svg, pen, drawing, currents, new Box(pen.size().margin(), 0, 0, 0));
        double foot = plan.draw();
        return new Drawn(
                svg.toString(),
                0,
                0,
                plan.right() + pen.size().stroke(),
                foot + 0.6 * pen.size().letters(),
                plan.words().stream()
                        .map(box -> List.of(box.left(), box.top(), box.right(), box.bottom()))
                        .toList());
    }

    private Drawn all() {
        levelLines();
        house();
        tank();
        fixtures();
        WaterSvg water = new WaterSvg(svg, stroke, pen.size().perM());
        drawing.taps().forEach(pipe -> water.tap(at(pipe.points())));
        for (int i = 0; i < drawing.pipes().size(); i++) {
            Line pipe = drawing.pipes().get(i);
            int index = i;
            water.pipe(pipe, at(pipe.points()), currents.map(all -> all.pipes().get(index)));
        }
        drawing.taps().forEach(this::mouth);
        for (Drawing.Port port : drawing.ports()) {
            svg.ring(x(port.at().xM()), y(port.at().yM()), stroke, 0.4 * stroke, port.label());
        }
        tried.ifPresent(ghost -> ghost(ghost.drawing(), ghost.words()));
        tankName();
        things();
        marks();
        names();
        slopes();
        return framed(water);
    }

    private Drawn framed(WaterSvg water) {
        double edge = width();
        double right = edge;
        for (int i = 0; i < down.size(); i++) {
            String label = label(down.get(i));
            At at = new At(edge + stroke, labels.get(i) + letters / 3, "start");
            svg.words(at, label, letters);
            Box box = Box.of(label, letters, at.x(), at.y(), at.anchor());
            placed.stands(box);
            right = Math.max(right, box.right());
        }
        double top =
                placed.words().stream().mapToDouble(box -> box.top() - stroke).reduce(0, Math::min);
        double lowest = placed.words().stream().mapToDouble(Box::bottom).max().orElse(0);
        double foot = Math.max(
                Math.max(height(), lowest),
                labels.get(labels.size() - 1) + pen.size().lineApart());
        foot = scaleBar(foot);
        if (currents.isPresent()) {
            foot += pen.size().lineApart();
            String cool = "under " + pen.speak().apply(Measure.celsius(WaterSvg.COOLEST_C));
            String hot = "over " + pen.speak().apply(Measure.celsius(WaterSvg.HOTTEST_C));
            water.key(new At(pen.size().margin(), foot, "start"), List.of(cool, hot), letters)
                    .forEach(placed::stands);
        }
        if (!drawnShort.isEmpty() && pen.views() == HousePen.Views.SIDE) {
            listed.addAll(Lists.lines("drawn short, towards you: ", drawnShort, LINE));
        }
        for (String line : listed) {
            foot += pen.size().lineApart();
            At at = new At(pen.size().margin(), foot, "start");
            svg.words(at, line, letters);
            Box box = Box.of(line, letters, at.x(), at.y(), at.anchor());
            placed.stands(box);
            right = Math.max(right, box.right());
        }
        if (pen.views() == HousePen.Views.BOTH) {
            PlanSvg plan =
                    new PlanSvg(svg, pen, drawing, currents, new Box(x(frame.leftM()), foot + letters / 2, edge, 0));
            foot = plan.draw();
            plan.words().forEach(placed::stands);
            right = Math.max(right, plan.right());
        }
        List<List<Double>> boxes = placed.words().stream()
                .map(box -> List.of(box.left(), box.top(), box.right(), box.bottom()))
                .toList();
        return new Drawn(svg.toString(), 0, top, right + stroke, foot + 0.6 * letters - top, boxes);
    }

    private double x(double metres) {
        return (metres - frame.leftM()) * pen.size().perM() + pen.size().margin();
    }

    private double y(double metres) {
        return height()
                - pen.size().margin()
                - (metres - frame.bottomM()) * pen.size().perM();
    }

    private double width() {
        return (frame.rightM() - frame.leftM()) * pen.size().perM()
                + 2 * pen.size().margin();
    }

    private double height() {
        return (frame.topM() - frame.bottomM()) * pen.size().perM()
                + 2 * pen.size().margin();
    }

    private List<double[]> at(List<Point> points) {
        return points.stream().map(p -> new double[] {x(p.xM()), y(p.yM())}).toList();
    }

    private Box box(Bounds of) {
        return new Box(x(of.leftM()), y(of.topM()), x(of.rightM()), y(of.bottomM()));
    }

    private void levelLines() {
        double edge = width();
        Look look = new Look("lc-level-stroke", "edge", 0.2 * stroke);
        String dots = "stroke-dasharray=\"" + Svg.number(0.5 * stroke) + " " + Svg.number(0.9 * stroke) + "\"";
        for (int i = 0; i < down.size(); i++) {
            double level = y(down.get(i).heightM());
            svg.line(
                    List.of(
                            new double[] {Math.min(x(down.get(i).atM()), edge - 4 * stroke), level},
                            new double[] {edge - 3 * stroke, level},
                            new double[] {edge, labels.get(i)}),
                    look,
                    dots);
            placed.faint(new Box(
                    Math.min(x(down.get(i).atM()), edge - 4 * stroke), level, edge - 3 * stroke, level + 0.2 * stroke));
        }
    }

    private String label(Drawing.Level level) {
        boolean tap = level.label().matches("T\\d+ .*");
        String name = tap && !pen.tapNames() ? level.label().replaceFirst(" .*", "") : level.label();
        return pen.speak().apply(Measure.rounded(level.heightM(), MeasureKind.LENGTH_M, 2)) + " " + name;
    }

    private void house() {
        double wall = 1.6 * stroke;
        svg.line(at(drawing.house().frame()), new Look("lc-wall-stroke", "wall", wall), "stroke-linejoin=\"round\"");
        svg.line(
                List.of(new double[] {0, y(0)}, new double[] {width() - 3 * stroke, y(0)}),
                new Look(INK, "ink", 0.5 * stroke),
                "");
        Drawing.Flue flue = drawing.house().flue();
        free(flue, wall);
        svg.box(box(flue.pipe()), 0, new Look("lc-iron-fill lc-thin", "line", 0));
        open(flue);
        Box heater = box(drawing.house().heater());
        svg.box(heater, stroke, new Look("lc-iron-stroke", "iron", 0.6 * stroke));
        flame(box(drawing.house().fire()));
        Look pane = new Look("lc-pane-stroke", "pane", 0.45 * stroke);
        drawing.house().panes().ifPresent(panes -> panes(panes).forEach(line -> svg.line(line, pane, "")));
    }

    /** The sides of the flue, open at its top; a wavy end where it goes on. */
    private void open(Drawing.Flue flue) {
        Look look = new Look("lc-iron-stroke", "iron", 0.5 * stroke);
        Box pipe = box(flue.pipe());
        for (double side : new double[] {pipe.left(), pipe.right()}) {
            svg.line(List.of(new double[] {side, pipe.bottom()}, new double[] {side, pipe.top()}), look, "");
        }
        if (flue.cut()) {
            double dip = (pipe.right() - pipe.left()) / 4;
            svg.line(
                    List.of(
                            new double[] {pipe.left() - dip, pipe.top() + dip},
                            new double[] {pipe.left() + dip, pipe.top() - dip},
                            new double[] {pipe.right() - dip, pipe.top() + dip},
                            new double[] {pipe.right() + dip, pipe.top() - dip}),
                    look,
                    "");
        }
    }

    /** The strip of the roof that nothing which burns comes into: the roof broken open, with an edge on both sides. */
    private void free(Drawing.Flue flue, double wall) {
        if (flue.opening().size() < 2) {
            return;
        }
        List<double[]> strip = at(flue.opening());
        svg.line(strip, new Look("lc-ground-stroke", "paper", 1.1 * wall), "");
        Look edge = new Look("lc-iron-stroke", "iron", 0.3 * stroke);
        String dots = "stroke-dasharray=\"" + Svg.number(0.6 * stroke) + " " + Svg.number(0.6 * stroke) + "\"";
        svg.line(strip, edge, dots);
        for (double[] end : strip) {
            svg.line(List.of(new double[] {end[0], end[1] - wall}, new double[] {end[0], end[1] + wall}), edge, "");
        }
    }

    private void flame(Box bed) {
        double width = bed.right() - bed.left();
        double height = bed.bottom() - bed.top();
        double[] across = {0, 0.12, 0.3, 0.42, 0.55, 0.72, 0.86, 1, 0.85, 0.5, 0.15};
        double[] up = {0.18, 0.62, 0.36, 1, 0.5, 0.8, 0.4, 0.18, 0.04, 0, 0.04};
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < across.length; i++) {
            points.add(new double[] {bed.left() + across[i] * width, bed.bottom() - up[i] * height});
        }
        svg.line(points, new Look("lc-glow-fill", "glow", 0), "data-shut");
    }

    /** The line of each pane, one over the other. */
    private List<List<double[]>> panes(Drawing.Panes panes) {
        List<List<double[]>> lines = new ArrayList<>();
        double dx = x(panes.lower().xM()) - x(panes.upper().xM());
        double dy = y(panes.lower().yM()) - y(panes.upper().yM());
        double length = Math.hypot(dx, dy);
        double apart = 1.1 * stroke;
        for (int i = 0; i < panes.count(); i++) {
            double right = dy / length * apart * i;
            double upward = -dx / length * apart * i;
            List<double[]> line = new ArrayList<>();
            for (Point end : List.of(panes.upper(), panes.lower())) {
                line.add(new double[] {x(end.xM()) + right, y(end.yM()) + upward});
            }
            lines.add(line);
        }
        return lines;
    }

    private void tank() {
        Drawing.TankBox tank = drawing.tank();
        double wide = x(tank.rightM()) - x(tank.leftM());
        Look water = new Look("lc-water-fill", "water-ground", 0);
        Look wall = new Look(INK, "ink", 0.5 * stroke);
        Box outline = new Box(x(tank.leftM()), y(tank.topM()), x(tank.rightM()), y(tank.baseM()));
        if (tank.round()) {
            svg.line(at(TankOutline.water(tank)), water, "data-shut");
            svg.box(outline, wide / 2, wall);
        } else {
            svg.box(new Box(outline.left(), y(tank.waterlineM()), outline.right(), outline.bottom()), 0, water);
            svg.box(outline, stroke, wall);
        }
        double inset = tank.insetM(tank.waterlineM());
        svg.line(
                at(List.of(
                        new Point(tank.leftM() + inset, tank.waterlineM()),
                        new Point(tank.rightM() - inset, tank.waterlineM()))),
                new Look("lc-cold-stroke", "warm-0", 0.3 * stroke),
                "");
        if (tank.baseM() > 0.2) {
            svg.line(
                    List.of(
                            new double[] {outline.left() - 2 * stroke, outline.bottom() + 0.7 * stroke},
                            new double[] {outline.right() + 2 * stroke, outline.bottom() + 0.7 * stroke}),
                    new Look("lc-board-stroke", "board", stroke),
                    "");
        }
    }

    private void fixtures() {
        Look look = new Look("lc-iron-stroke", "iron", 0.5 * stroke);
        for (Drawing.Fixture fixture : drawing.house().fixtures()) {
            svg.line(at(fixture.points()), look, "stroke-linejoin=\"round\"");
            fixture.box().ifPresent(vessel -> {
                double round = fixture.kind() == Drawing.Fixture.Kind.FLOAT_VALVE
                        ? (x(vessel.rightM()) - x(vessel.leftM())) / 2
                        : 0;
                svg.box(box(vessel), round, look);
            });
        }
    }

    /** The tap at the end of its pipe. */
    private void mouth(Line pipe) {
        if (pipe.mark().equals("T0")) {
            return;
        }
        double endX = x(pipe.end().xM());
        double endY = y(pipe.end().yM());
        double above = endY - y(pipe.end().yM() + 0.07);
        svg.line(
                List.of(
                        new double[] {endX - stroke, endY - above - 1.2 * stroke},
                        new double[] {endX + stroke, endY - above - 1.2 * stroke}),
                new Look(INK, "ink", 0.5 * stroke),
                "");
    }

    /** The other house: its outlines alone, over this one. */
    private void ghost(Drawing other, String words) {
        Look look = new Look("lc-ghost-stroke", "ghost", 0.55 * stroke);
        String dashes = "stroke-dasharray=\"" + Svg.number(1.2 * stroke) + " " + Svg.number(0.8 * stroke)
                + "\" stroke-linejoin=\"round\"";
        svg.open("lc-ghost");
        Drawing.TankBox tank = other.tank();
        svg.line(at(TankOutline.wall(tank)), look, "data-shut " + dashes);
        double inset = tank.insetM(tank.waterlineM());
        svg.line(
                at(List.of(
                        new Point(tank.leftM() + inset, tank.waterlineM()),
                        new Point(tank.rightM() - inset, tank.waterlineM()))),
                look,
                dashes);
        other.pipes().forEach(pipe -> svg.line(at(pipe.points()), look, dashes));
        other.taps().forEach(pipe -> svg.line(at(pipe.points()), look, dashes));
        other.house().panes().ifPresent(panes -> svg.line(at(List.of(panes.upper(), panes.lower())), look, dashes));
        svg.shut();
        listed.add("dashed: " + words);
    }

    /** What names had better not cover. */
    private void things() {
        for (Line pipe : drawing.pipes()) {
            thingsAlong(at(pipe.points()), PIPE_WIDE);
        }
        drawing.taps().forEach(pipe -> thingsAlong(at(pipe.points()), PIPE_WIDE));
        thingsAlong(at(drawing.house().frame()), WALL_WIDE);
        drawing.house().fixtures().forEach(fixture -> thingsAlong(at(fixture.points()), PIPE_WIDE));
        drawing.house().panes().ifPresent(panes -> panes(panes).forEach(pane -> thingsAlong(pane, PIPE_WIDE)));
        drawing.house().fixtures().forEach(fixture -> fixture.box().ifPresent(vessel -> placed.thing(box(vessel))));
        placed.thing(box(drawing.house().heater()));
        placed.thing(new Box(
                x(drawing.tank().leftM()),
                y(drawing.tank().topM()),
                x(drawing.tank().rightM()),
                y(drawing.tank().baseM())));
        placed.thing(new Box(0, y(0) - stroke / 4, width(), y(0) + stroke / 4));
        placed.thing(box(drawing.house().flue().pipe()));
        drawing.ports()
                .forEach(port ->
                        placed.thing(Box.round(x(port.at().xM()), y(port.at().yM()), 1.2 * stroke)));
    }

    /**
     * @param line in units of the drawing
     * @param wide half of what it takes across, strokes
     */
    private void thingsAlong(List<double[]> line, double wide) {
        placed.thing(line, stroke, wide * stroke);
    }

    /** The mark of each pipe in a circle on it, and where they are asked for the pieces it is cut into. */
    private void marks() {
        double radius = 0.66 * letters;
        List<Line> all = new ArrayList<>(drawing.pipes());
        all.addAll(drawing.taps());
        // The coil has the least room.
        all.sort(Comparator.comparing(pipe -> pipe.role() != Drawing.Role.COIL));
        for (Line pipe : all) {
            Optional<At> at = placed.placeRound(radius, markPlaces(pipe, radius));
            String title = pipe.name();
            at.ifPresent(found -> {
                svg.ring(found.x(), found.y(), radius, 0.3 * stroke, title);
                svg.words(new At(found.x(), found.y() + 0.22 * letters, "middle"), pipe.mark(), 0.62 * letters);
            });
            if (at.isEmpty()) {
                listed.add(pipe.mark() + " " + pipe.name());
            }
        }
        for (Line pipe : all) {
            List<String> cut = pen.pieces().getOrDefault(pipe.mark(), List.of());
            if (!cut.isEmpty()) {
                pieces(pipe, cut);
            }
        }
    }

    private List<At> markPlaces(Line pipe, double radius) {
        List<At> places = new ArrayList<>();
        if (pipe.role() == Drawing.Role.COIL) {
            Box heater = box(drawing.house().heater());
            double inside = 1.15 * radius;
            places.add(new At(heater.left() + inside, heater.top() + inside, "middle"));
            places.add(new At(heater.left() + inside, heater.bottom() - inside, "middle"));
            places.add(new At(heater.left() - inside, (heater.top() + heater.bottom()) / 2, "middle"));
            places.add(new At(heater.right() + inside, heater.bottom() - inside, "middle"));
        }
        List<double[]> line = at(pipe.points());
        for (double off : new double[] {0, 2.2, -2.2, 4, -4}) {
            for (double share : ALONG) {
                double[] at = WaterSvg.along(line, share);
                places.add(new At(at[0] - at[3] * off * radius, at[1] + at[2] * off * radius, "middle"));
            }
        }
        return places;
    }

    /** Ticks where a pipe is cut, with the marks of its pieces beside them; those without room are listed. */
    private void pieces(Line pipe, List<String> cut) {
        // Those of the coil have no room, and the pipes to the taps are not to scale across.
        if (pipe.role() == Drawing.Role.COIL || pipe.role() == Drawing.Role.TAP) {
            listed.addAll(Lists.lines(pipe.mark() + " in pieces from its near end: ", cut, LONG_LINE));
            return;
        }
        List<double[]> line = at(pipe.points());
        for (int i = 1; i < cut.size(); i++) {
            double[] at = WaterSvg.along(line, (double) i / cut.size());
            svg.line(
                    List.of(
                            new double[] {at[0] - at[3] * stroke * 1.6, at[1] + at[2] * stroke * 1.6},
                            new double[] {at[0] + at[3] * stroke * 1.6, at[1] - at[2] * stroke * 1.6}),
                    new Look(INK, "ink", 0.3 * stroke),
                    "");
        }
        List<String> noRoom = new ArrayList<>();
        for (int i = 0; i < cut.size(); i++) {
            double[] at = WaterSvg.along(line, (i + 0.5) / cut.size());
            if (!placedBeside(cut.get(i), 0.8 * letters, at, 1.1)) {
                noRoom.add(cut.get(i));
            }
        }
        if (!noRoom.isEmpty()) {
            listed.addAll(Lists.lines(pipe.mark() + " in pieces from its near end: ", noRoom, LONG_LINE));
        }
    }

    private boolean placedBeside(String words, double size, double[] at, double gap) {
        double off = gap * letters;
        List<At> places = new ArrayList<>();
        for (double further : new double[] {1, 1.8, 2.8}) {
            places.add(new At(at[0] + off * further, at[1] + 0.3 * size, "start"));
            places.add(new At(at[0] - off * further, at[1] + 0.3 * size, "end"));
            places.add(new At(at[0], at[1] - off * further, "middle"));
            places.add(new At(at[0], at[1] + off * further + 0.6 * size, "middle"));
        }
        Optional<At> found = placed.place(words, size, places);
        found.ifPresent(place -> svg.words(place, words, size));
        return found.isPresent();
    }

    private void tankName() {
        Drawing.TankBox tank = drawing.tank();
        double middle = x(tank.leftM() + tank.widthM() / 2);
        double size = Math.min(0.8 * letters, (x(tank.rightM()) - x(tank.leftM())) / 3.2);
        List<At> inside = new ArrayList<>();
        for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
            inside.add(new At(middle, y(tank.baseM() + share * tank.heightM()) + size / 3, "middle"));
        }
        placed.placeOver("tank", size, inside).ifPresent(at -> svg.words(at, "tank", size));
    }

    private void names() {
        drawing.house().panes().ifPresent(panes -> {
            String count = panes.count() == 1 ? "1 pane, " : panes.count() + " panes, ";
            name(count + pen.speak().apply(new Measure(panes.tiltDeg(), MeasureKind.ANGLE_DEG)), panes.upper());
        });
        Bounds flue = drawing.house().flue().pipe();
        name("flue", new Point(flue.rightM(), flue.topM()));
        for (Drawing.Fixture fixture : drawing.house().fixtures()) {
            if (fixture.kind() != Drawing.Fixture.Kind.OPEN_VENT) {
                name(fixture.kind().words(), anchor(fixture));
            }
        }
    }

    private static Point anchor(Drawing.Fixture fixture) {
        Point end = fixture.points().get(fixture.points().size() - 1);
        return switch (fixture.kind()) {
            case FEED_CISTERN ->
                fixture.box()
                        .map(vessel -> new Point(vessel.leftM(), vessel.topM()))
                        .orElse(end);
            case FLOAT_VALVE -> fixture.points().get(0);
            case OPEN_VENT, LOOSE_LID, OVERFLOW -> end;
        };
    }

    /** Places round a point: right, left, above, below, and the corners, each nearer and farther. */
    private List<At> around(Point point, double... offs) {
        List<At> places = new ArrayList<>();
        double x = x(point.xM());
        double y = y(point.yM());
        for (double share : offs) {
            double off = share * letters;
            places.add(new At(x + off, y + letters / 3, "start"));
            places.add(new At(x - off, y + letters / 3, "end"));
            places.add(new At(x, y - off, "middle"));
            places.add(new At(x, y + off + 0.7 * letters, "middle"));
            places.add(new At(x + off, y - off, "start"));
            places.add(new At(x - off, y - off, "end"));
            places.add(new At(x + off, y + off + 0.7 * letters, "start"));
            places.add(new At(x - off, y + off + 0.7 * letters, "end"));
        }
        return places;
    }

    /** Words at a point, with a line to it where they stand off; listed where there is no room near it. */
    private void name(String words, Point point) {
        double size = 0.75 * letters;
        Optional<At> found = placed.place(words, size, around(point, 0.6, 1, 1.6, 2.3, 3.2, 4.2));
        if (found.isEmpty()) {
            listed.add("also there: " + words);
            return;
        }
        At at = found.get();
        svg.words(at, words, size);
        double[] from = {x(point.xM()), y(point.yM())};
        Box.of(words, size, at.x(), at.y(), at.anchor())
                .nearestIfFar(from, letters)
                .ifPresent(
                        near -> svg.line(List.of(from, near), new Look("lc-level-stroke", "edge", 0.2 * stroke), ""));
    }

    /** How steep each pipe that lies is, beside it where there is room. */
    private void slopes() {
        for (Line pipe : drawing.pipes()) {
            Drawing.Run run = pipe.run();
            if (pipe.role() != Drawing.Role.COIL && run.levelRunM() > SLOPED_SHARE * run.lengthM()) {
                String words = pipe.mark() + " " + slope(run, pen.speak());
                List<double[]> line = at(pipe.points());
                boolean beside = Arrays.stream(ALONG)
                        .anyMatch(share -> placedBeside(words, 0.72 * letters, WaterSvg.along(line, share), 0.9));
                if (!beside) {
                    listed.add(words);
                }
            }
            if (pipe.drawnShort()) {
                drawnShort.add(pipe.mark());
            }
        }
    }

    /** Rise for each metre of run where a level can show it; steeper as an angle. Of the pipe itself, not of its picture. */
    public static String slope(Drawing.Run run, Function<Measure, String> speak) {
        double riseM = run.riseM();
        if (riseM == 0) {
            return "level";
        }
        String way = riseM > 0 ? "rises " : "falls ";
        if (Math.abs(riseM) > run.levelRunM()) {
            double angle = Math.toDegrees(Math.atan2(Math.abs(riseM), run.levelRunM()));
            return way + speak.apply(new Measure(angle, MeasureKind.ANGLE_DEG));
        }
        return way + speak.apply(new Measure(1000 * Math.abs(riseM) / run.levelRunM(), MeasureKind.SLOPE_MM_PER_M));
    }

    /** @return where it ends, downward */
    private double scaleBar(double below) {
        double y = below + 0.9 * letters;
        double left = pen.size().margin();
        double length = pen.bar().lengthM() * pen.size().perM();
        double tick = 0.35 * letters;
        svg.line(
                List.of(
                        new double[] {left, y - tick},
                        new double[] {left, y},
                        new double[] {left + length, y},
                        new double[] {left + length, y - tick}),
                new Look(INK, "ink", 0.4 * stroke),
                "");
        At at = new At(left + length + letters / 2, y + letters / 4, "start");
        svg.words(at, pen.bar().words(), letters);
        placed.stands(Box.of(pen.bar().words(), letters, at.x(), at.y(), at.anchor()));
        return y + letters / 4;
    }

    /**
     * The picture.
     *
     * @param drawn what {@link #draw} made
     * @param attributes more attributes of its outermost element
     * @param title what it is called
     * @param says the same in words
     */
    public static String picture(Drawn drawn, String attributes, String title, String says) {
        String view = String.format(
                Locale.ROOT,
                "viewBox=\"%.2f %.2f %.2f %.2f\"",
                drawn.left(),
                drawn.top(),
                drawn.width(),
                drawn.height());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" fill=\"none\" " + view + " " + attributes
                + "><title>" + Html.text(title) + "</title><desc>" + Html.text(says) + "</desc>" + drawn.content()
                + "</svg>";
    }
}
