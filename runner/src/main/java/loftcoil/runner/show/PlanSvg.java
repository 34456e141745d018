package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Plan;
import loftcoil.engine.sheet.Drawing.PlanRun;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.runner.show.Placed.At;
import loftcoil.runner.show.Placed.Box;
import loftcoil.runner.show.Svg.Look;

/** The house from above, under its elevation and to the same scale: what stands one below the other there is one thing. */
final class PlanSvg {

    private static final String INK = "lc-ink-stroke";
    private static final int LINE = 60;
    private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};
    private static final double TAPS_M = 0.12;

    private final Svg svg;
    private final HousePen pen;
    private final Drawing drawing;
    private final Plan plan;
    private final Optional<Currents> currents;
    private final double left;
    private final double leftM;
    private final double top;
    private final double stroke;
    private final double letters;
    private final Placed placed;
    private final List<String> listed = new ArrayList<>();
    private double right;

    /**
     * @param within where it begins: left, top, and how far its words may reach to the right
     */
    PlanSvg(Svg svg, HousePen pen, Drawing drawing, Optional<Currents> currents, Box within) {
        this.svg = svg;
        this.pen = pen;
        this.drawing = drawing;
        this.plan = drawing.plan();
        this.currents = currents;
        this.left = within.left();
        this.stroke = pen.size().stroke();
        this.letters = pen.size().letters();
        this.leftM = pen.views() == HousePen.Views.SIDE
                ? plan.walls().leftM()
                : asWideAs(plan, drawing.bounds()).leftM();
        this.top = within.top() + 1.9 * letters;
        this.right = x(plan.walls().rightM());
        double foot = y(plan.walls().bottomM());
        this.placed = new Placed(new Box(0, within.top(), Math.max(within.right(), right), foot));
    }

    /** The frame of an elevation, so wide that the plan below it has room. */
    static Bounds asWideAs(Plan plan, Bounds elevation) {
        return new Bounds(
                Math.min(elevation.leftM(), plan.walls().leftM()),
                elevation.bottomM(),
                Math.max(elevation.rightM(), plan.walls().rightM()),
                elevation.topM());
    }

    /** Boxes of its words. */
    List<Box> words() {
        return placed.words();
    }

    /** How far to the right it reaches. */
    double right() {
        return right;
    }

    /** Draws it. @return where it ends, downward */
    double draw() {
        write(
                pen.views() == HousePen.Views.SIDE ? "seen from above" : "seen from above, to the same scale",
                new At(left, top - 0.6 * letters, "start"),
                letters);
        frame();
        tank();
        plan.panes().ifPresent(this::panes);
        pipes();
        ports();
        north();
        things();
        marks();
        names();
        double foot = y(plan.walls().bottomM());
        List<String> said = new ArrayList<>(DrawingWords.plan(plan, pen.speak()));
        // Too long to find the same place beside every house.
        plan.panes().ifPresent(panes -> said.add("panes face " + DrawingWords.direction(panes.azimuthDeg())));
        if (!listed.isEmpty()) {
            said.add("also there: " + String.join(", ", listed));
        }
        for (String line : Lists.lines("", said, LINE)) {
            foot += pen.size().lineApart();
            write(line, new At(left, foot, "start"), letters);
        }
        return foot;
    }

    private double x(double metres) {
        return left + (metres - leftM) * pen.size().perM();
    }

    private double y(double metres) {
        return top + (plan.walls().topM() - metres) * pen.size().perM();
    }

    private double[] at(Point point) {
        return new double[] {x(point.xM()), y(point.yM())};
    }

    private List<double[]> at(List<Point> points) {
        return points.stream().map(this::at).toList();
    }

    private Box box(Bounds of) {
        return new Box(x(of.leftM()), y(of.topM()), x(of.rightM()), y(of.bottomM()));
    }

    private void write(String words, At at, double size) {
        svg.words(at, words, size);
        Box box = Box.of(words, size, at.x(), at.y(), at.anchor());
        placed.stands(box);
        right = Math.max(right, box.right());
    }

    private void frame() {
        svg.box(box(plan.walls()), 0, new Look("lc-wall-stroke", "wall", 1.6 * stroke));
        svg.box(box(plan.heater()), stroke, new Look("lc-iron-stroke", "iron", 0.6 * stroke));
        Box flue = box(plan.flue());
        svg.box(flue, (flue.right() - flue.left()) / 2, new Look("lc-iron-stroke", "iron", 0.5 * stroke));
    }

    private void tank() {
        List<double[]> outline = at(plan.tank());
        svg.line(outline, new Look("lc-water-fill", "water-ground", 0), "data-shut");
        svg.line(outline, new Look(INK, "ink", 0.5 * stroke), "data-shut");
        if (plan.missM() > 0) {
            Point from = plan.ports().get(0).at();
            Point to = plan.tank().stream()
                    .min(Comparator.comparingDouble(
                            point -> Math.hypot(point.xM() - from.xM(), point.yM() - from.yM())))
                    .orElse(from);
            svg.line(
                    at(List.of(from, to)),
                    new Look(INK, "ink", 0.4 * stroke),
                    "stroke-dasharray=\"" + Svg.number(0.4 * stroke) + " " + Svg.number(0.8 * stroke) + "\"");
        }
    }

    private void panes(Drawing.PlanPanes panes) {
        Look look = new Look("lc-pane-stroke", "pane", 0.45 * stroke);
        svg.line(at(panes.corners()), look, "data-shut");
        arrow(at(panes.middle()), at(panes.ahead()), look);
    }

    private void arrow(double[] from, double[] to, Look look) {
        double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
        double dx = (to[0] - from[0]) / length * 1.6 * stroke;
        double dy = (to[1] - from[1]) / length * 1.6 * stroke;
        svg.line(List.of(from, to), look, "");
        svg.line(
                List.of(new double[] {to[0] - dx - dy / 2, to[1] - dy + dx / 2}, to, new double[] {
                    to[0] - dx + dy / 2, to[1] - dy - dx / 2
                }),
                look,
                "stroke-linejoin=\"round\"");
    }

    private void pipes() {
        WaterSvg water = new WaterSvg(svg, stroke, pen.size().perM());
        for (int i = 0; i < plan.runs().size(); i++) {
            PlanRun run = plan.runs().get(i);
            int index = i;
            if (!run.upright()) {
                water.pipe(run.pipe(), at(run.pipe().points()), currents.map(all -> all.pipes()
                        .get(index)));
            }
        }
        for (PlanRun run : plan.runs()) {
            if (run.upright()) {
                double[] at = at(run.pipe().start());
                svg.ring(at[0], at[1], 1.1 * stroke, 0.4 * stroke, run.pipe().name() + ", upright");
            }
        }
    }

    /** The ports of the loop, and from the draw port a stub: which way the pipes to the taps lead is not part of a design. */
    private void ports() {
        for (Drawing.Port port : plan.ports()) {
            double[] at = at(port.at());
            svg.ring(at[0], at[1], 0.8 * stroke, 0.4 * stroke, port.label());
        }
        if (!drawing.taps().isEmpty()) {
            Point port = plan.ports().get(2).at();
            svg.line(
                    at(List.of(port, new Point(port.xM() + TAPS_M, port.yM()))),
                    new Look("lc-tap-stroke", "soft", 0.55 * stroke),
                    "");
        }
    }

    private void north() {
        if (plan.northDeg().isEmpty()) {
            return;
        }
        double turned = Math.toRadians(plan.northDeg().getAsDouble());
        double half = 1.5 * letters;
        double middleX = x(plan.walls().rightM()) + 3.2 * letters;
        double middleY = y(plan.walls().topM()) + 2.4 * letters;
        double dx = Math.sin(turned) * half;
        double dy = -Math.cos(turned) * half;
        arrow(
                new double[] {middleX - dx, middleY - dy},
                new double[] {middleX + dx, middleY + dy},
                new Look(INK, "ink", 0.5 * stroke));
        double further = 1.5;
        write("N", new At(middleX + dx * further, middleY + dy * further + letters / 3, "middle"), letters);
        right = Math.max(right, middleX + 2.8 * letters);
    }

    private void things() {
        plan.runs().forEach(run -> thingsAlong(run.pipe().points()));
        List<Point> wall = new ArrayList<>(plan.tank());
        wall.add(plan.tank().get(0));
        thingsAlong(wall);
        plan.panes().ifPresent(panes -> {
            List<Point> rim = new ArrayList<>(panes.corners());
            rim.add(panes.corners().get(0));
            thingsAlong(rim);
            thingsAlong(List.of(panes.middle(), panes.ahead()));
        });
        placed.thing(box(plan.flue()));
        rim(plan.walls());
        rim(plan.heater());
    }

    private void rim(Bounds of) {
        Point corner = new Point(of.leftM(), of.topM());
        thingsAlong(List.of(
                corner,
                new Point(of.rightM(), of.topM()),
                new Point(of.rightM(), of.bottomM()),
                new Point(of.leftM(), of.bottomM()),
                corner));
    }

    private void thingsAlong(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            double[] from = at(points.get(i - 1));
            double[] to = at(points.get(i));
            int steps = (int) Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / (2 * stroke)) + 1;
            for (int k = 0; k <= steps; k++) {
                double share = (double) k / steps;
                placed.thing(Box.round(
                        from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]), 0.7 * stroke));
            }
        }
    }

    private void marks() {
        double radius = 0.66 * letters;
        List<PlanRun> all = new ArrayList<>(plan.runs());
        all.sort(Comparator.comparing(run -> run.pipe().role() != Drawing.Role.COIL));
        for (PlanRun run : all) {
            List<double[]> line = at(run.pipe().points());
            List<At> places = new ArrayList<>();
            for (double off : run.upright() ? new double[] {2, -2, 3.4, -3.4} : new double[] {0, 2.2, -2.2, 4, -4}) {
                for (double share : ALONG) {
                    double[] at = WaterSvg.along(line, share);
                    double shift = run.upright() ? (share - 0.5) * 8 * radius : 0;
                    places.add(new At(at[0] - at[3] * off * radius + shift, at[1] + at[2] * off * radius, "middle"));
                }
            }
            Optional<At> found = placed.placeRound(radius, places);
            found.ifPresent(at -> {
                if (run.upright()) {
                    svg.line(
                            List.of(line.get(0), new double[] {at.x(), at.y()}),
                            new Look("lc-level-stroke", "edge", 0.2 * stroke),
                            "");
                }
                svg.ring(at.x(), at.y(), radius, 0.3 * stroke, run.pipe().name());
                svg.words(
                        new At(at.x(), at.y() + 0.22 * letters, "middle"),
                        run.pipe().mark(),
                        0.62 * letters);
            });
            if (found.isEmpty()) {
                listed.add(run.pipe().mark());
            }
        }
    }

    private void names() {
        Bounds heater = plan.heater();
        name("heater", new Point((heater.leftM() + heater.rightM()) / 2, (heater.bottomM() + 3 * heater.topM()) / 4));
        Bounds flue = plan.flue();
        name("flue", new Point(flue.leftM(), (flue.bottomM() + flue.topM()) / 2));
        double middleX = plan.tank().stream().mapToDouble(Point::xM).average().orElse(0);
        double middleY = plan.tank().stream().mapToDouble(Point::yM).average().orElse(0);
        name("tank", new Point(middleX, middleY));
        if (!drawing.taps().isEmpty()) {
            String marks = drawing.taps().stream()
                    .map(Drawing.Line::mark)
                    .filter(mark -> drawing.taps().size() == 1
                            || !drawing.taps().get(0).mark().equals("T0")
                            || mark.equals("T0"))
                    .collect(Collectors.joining(", "));
            Point port = plan.ports().get(2).at();
            name("to " + marks, new Point(port.xM() + TAPS_M, port.yM()));
        }
    }

    /** Words as near to a point as they find room, with a line to it from afar; below the plan there is a line for those that find none. */
    private void name(String words, Point point) {
        double size = 0.75 * letters;
        double[] at = at(point);
        List<At> places = new ArrayList<>();
        places.add(new At(at[0], at[1] + size / 3, "middle"));
        for (double off : new double[] {0.7, 1.2, 2, 3, 4.2, 5.6}) {
            double far = off * letters;
            places.add(new At(at[0] + far, at[1] + size / 3, "start"));
            places.add(new At(at[0] - far, at[1] + size / 3, "end"));
            for (String anchor : List.of("middle", "start", "end")) {
                places.add(new At(at[0], at[1] - far, anchor));
                places.add(new At(at[0], at[1] + far + 0.6 * size, anchor));
            }
        }
        Optional<At> found = placed.place(words, size, places);
        if (found.isEmpty()) {
            listed.add(words);
            return;
        }
        svg.words(found.get(), words, size);
        Box.of(words, size, found.get().x(), found.get().y(), found.get().anchor())
                .nearestIfFar(at, 0.9 * letters)
                .ifPresent(near -> svg.line(List.of(at, near), new Look("lc-level-stroke", "edge", 0.2 * stroke), ""));
    }
}
