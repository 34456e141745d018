package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Window;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Plan;
import loftcoil.engine.sheet.Drawing.PlanPanes;
import loftcoil.engine.sheet.Drawing.PlanRun;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Port;
import loftcoil.engine.sheet.Drawing.Role;
import loftcoil.engine.sheet.Drawing.TankBox;

/** Places everything of the plan below the elevation: what lies along in that lies along here, so that one stands under the other. */
final class HousePlan {

    /** Hot and cold pipe lie so far behind and before the middle, so that one is not hidden by the other. */
    private static final double ASIDE_M = 0.1;

    private static final double WALLS_M = 0.3;
    private static final double BESIDE_TANK_M = 0.14;
    private static final double ARROW_M = 0.3;
    private static final int ROUND = 48;
    /** A pipe that ends no farther from the tank than this meets it. */
    private static final double MEETS_M = 0.03;

    private final Design design;
    private final Headings headings;
    private final Seen seen;
    private final boolean surveyed;
    /** Which direction of the compass lies to the right; empty where nobody can tell. */
    private final OptionalDouble rightDeg;

    /**
     * What the elevation has placed.
     *
     * @param pipes the pipes of the loop
     * @param box the tank
     * @param depthM how deep the tank goes into the elevation, m
     * @param house heater, flue, walls and panes
     * @param inletX where the inlet of the coil is, m
     */
    record Seen(List<Line> pipes, TankBox box, double depthM, Drawing.House house, double inletX) {}

    HousePlan(Design design, Headings headings, Seen seen) {
        this.design = design;
        this.headings = headings;
        this.seen = seen;
        this.surveyed = Stream.concat(design.hotLegs().stream(), design.coldLegs().stream())
                .anyMatch(leg -> headings.of(leg).isPresent());
        this.rightDeg = surveyed
                ? OptionalDouble.of(headings.wholeDeg(design.hotLegs()))
                : design.window().map(Window::azimuthDeg).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    Plan plan() {
        double asideM = Math.min(ASIDE_M, seen.depthM() / 4);
        List<PlanRun> hot = surveyed ? walked(design.hotLegs(), Role.HOT, 0, asideM) : drawn(Role.HOT, asideM);
        List<PlanRun> cold = surveyed ? walkedBack(asideM) : drawn(Role.COLD, -asideM);
        Point hotEnd = hot.get(hot.size() - 1).pipe().end();
        Point coldStart = cold.get(0).pipe().start();
        Point middle = middle(hot, hotEnd);
        List<PlanRun> runs = new ArrayList<>(cold);
        runs.add(coil(asideM));
        runs.addAll(hot);
        List<Point> tank = outline(middle);
        double missM = outsideM(coldStart, middle);
        List<Port> ports = List.of(
                new Port("cold port", coldStart),
                new Port("return port", hotEnd),
                new Port("draw port", new Point(middle.xM() + seen.box().widthM() / 2, middle.yM())));
        Bounds heater = heater();
        Bounds flue = flue();
        Optional<PlanPanes> panes = design.window().map(window -> panes(window, middle));
        return new Plan(
                runs,
                walls(runs, tank, panes, heater),
                heater,
                flue,
                tank,
                ports,
                panes,
                north(),
                surveyed,
                missM < MEETS_M ? 0 : missM);
    }

    private OptionalDouble north() {
        // Right is rightDeg clockwise from north, so straight up is a quarter turn less.
        return rightDeg.isEmpty() ? rightDeg : OptionalDouble.of((450 - rightDeg.getAsDouble()) % 360);
    }

    /** Legs of which nobody took the direction: along as in elevation, what they are longer goes out and back square to that. */
    private List<PlanRun> drawn(Role role, double yM) {
        List<PlanRun> runs = new ArrayList<>();
        for (Line line : seen.pipes()) {
            if (line.role() == role) {
                double overM = line.run().levelRunM()
                        - Math.abs(line.end().xM() - line.start().xM());
                double outM = Math.max(0, overM) / 2 * Math.signum(yM);
                List<Point> points = List.of(
                        new Point(line.start().xM(), yM),
                        new Point(line.start().xM(), yM + outM),
                        new Point(line.end().xM(), yM + outM),
                        new Point(line.end().xM(), yM));
                runs.add(new PlanRun(with(line, points), OptionalDouble.empty()));
            }
        }
        return runs;
    }

    private static Line with(Line line, List<Point> points) {
        return new Line(line.role(), line.mark(), line.name(), points, line.run());
    }

    /** Legs as they were surveyed, from a place on. */
    private List<PlanRun> walked(List<Leg> legs, Role role, double startX, double startY) {
        List<PlanRun> runs = new ArrayList<>();
        List<Line> lines =
                seen.pipes().stream().filter(line -> line.role() == role).toList();
        Point at = new Point(startX, startY);
        double towards = rightDeg.orElse(0);
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            towards = headings.of(leg).orElse(towards);
            Point step = ahead(towards, leg.levelRunM());
            Point next = new Point(at.xM() + step.xM(), at.yM() + step.yM());
            boolean lies = leg.levelRunM() > 0;
            runs.add(new PlanRun(
                    with(lines.get(i), List.of(at, next)), lies ? headings.of(leg) : OptionalDouble.empty()));
            at = next;
        }
        return runs;
    }

    /** The cold legs end at the coil's inlet; where they begin follows. */
    private List<PlanRun> walkedBack(double asideM) {
        List<PlanRun> fromNought = walked(design.coldLegs(), Role.COLD, 0, 0);
        Point end = fromNought.get(fromNought.size() - 1).pipe().end();
        return walked(design.coldLegs(), Role.COLD, seen.inletX() - end.xM(), -asideM - end.yM());
    }

    private Point ahead(double headingDeg, double lengthM) {
        double turned = Math.toRadians(headingDeg - rightDeg.orElse(0));
        return new Point(lengthM * Math.cos(turned), -lengthM * Math.sin(turned));
    }

    private PlanRun coil(double asideM) {
        Line coil = seen.pipes().stream()
                .filter(line -> line.role() == Role.COIL)
                .findFirst()
                .orElseThrow();
        List<Point> points = List.of(
                new Point(seen.inletX(), -asideM), new Point(seen.inletX(), asideM), new Point(0, asideM));
        return new PlanRun(with(coil, points), OptionalDouble.empty());
    }

    /** Middle of the tank: where the elevation has it, or beyond the end of a surveyed hot pipe. */
    private Point middle(List<PlanRun> hot, Point hotEnd) {
        if (!surveyed) {
            return new Point(seen.box().leftM() + seen.box().widthM() / 2, 0);
        }
        Point way = new Point(1, 0);
        for (PlanRun run : hot) {
            double dx = run.pipe().end().xM() - run.pipe().start().xM();
            double dy = run.pipe().end().yM() - run.pipe().start().yM();
            double length = Math.hypot(dx, dy);
            if (length > 0) {
                way = new Point(dx / length, dy / length);
            }
        }
        double inM = toWallM(way);
        return new Point(hotEnd.xM() + way.xM() * inM, hotEnd.yM() + way.yM() * inM);
    }

    private boolean round() {
        return design.tank().kind().orElse(Tank.Kind.UPRIGHT_CYLINDER) == Tank.Kind.UPRIGHT_CYLINDER;
    }

    /** From the middle of the tank to its wall in a direction, m. */
    private double toWallM(Point way) {
        double halfWide = seen.box().widthM() / 2;
        double halfDeep = seen.depthM() / 2;
        if (round()) {
            return halfWide;
        }
        double across = Math.abs(way.xM()) < 1e-9 ? Double.MAX_VALUE : halfWide / Math.abs(way.xM());
        double along = Math.abs(way.yM()) < 1e-9 ? Double.MAX_VALUE : halfDeep / Math.abs(way.yM());
        return Math.min(across, along);
    }

    private double outsideM(Point at, Point middle) {
        double dx = at.xM() - middle.xM();
        double dy = at.yM() - middle.yM();
        double away = Math.hypot(dx, dy);
        return away == 0 ? 0 : Math.max(0, away - toWallM(new Point(dx / away, dy / away)));
    }

    private List<Point> outline(Point middle) {
        double halfWide = seen.box().widthM() / 2;
        double halfDeep = seen.depthM() / 2;
        List<Point> points = new ArrayList<>();
        if (!round()) {
            for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
                points.add(new Point(middle.xM() + corner[0] * halfWide, middle.yM() + corner[1] * halfDeep));
            }
            return points;
        }
        for (int i = 0; i < ROUND; i++) {
            double turned = 2 * Math.PI * i / ROUND;
            points.add(new Point(
                    middle.xM() + halfWide * Math.cos(turned), middle.yM() + halfWide * Math.sin(turned)));
        }
        return points;
    }

    private Bounds heater() {
        Bounds side = seen.house().heater();
        double half = (side.rightM() - side.leftM()) / 2;
        return new Bounds(side.leftM(), -half, side.rightM(), half);
    }

    private Bounds flue() {
        Bounds side = seen.house().flue().pipe();
        double half = (side.rightM() - side.leftM()) / 2;
        return new Bounds(side.leftM(), -half, side.rightM(), half);
    }

    /** Square to the way they face, as far from the middle of the tank as in elevation, shortened by their tilt. */
    private PlanPanes panes(Window window, Point middle) {
        Point faces = surveyed ? ahead(window.azimuthDeg(), 1) : new Point(1, 0);
        Drawing.Panes side = seen.house().panes().orElseThrow();
        double offM = (side.upper().xM() + side.lower().xM()) / 2
                - seen.box().leftM()
                - seen.box().widthM() / 2;
        double leastM = toWallM(faces) + BESIDE_TANK_M;
        double halfLong = Math.sqrt(window.areaM2()) / 2;
        double halfDeep = halfLong * Math.cos(Math.toRadians(window.tiltDeg()));
        double away = Math.max(offM, Math.min(leastM, leastM * Math.sin(Math.toRadians(window.tiltDeg()))));
        Point at = new Point(middle.xM() + faces.xM() * away, middle.yM() + faces.yM() * away);
        List<Point> corners = new ArrayList<>();
        for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
            double out = corner[0] * halfDeep;
            double along = corner[1] * halfLong;
            corners.add(new Point(
                    at.xM() + faces.xM() * out - faces.yM() * along, at.yM() + faces.yM() * out + faces.xM() * along));
        }
        double tip = halfDeep + ARROW_M;
        Point tipAt = new Point(at.xM() + faces.xM() * tip, at.yM() + faces.yM() * tip);
        return new PlanPanes(corners, at, tipAt, window.azimuthDeg());
    }

    /** On the side of the flue as far as the elevation has it, elsewhere round everything. */
    private Bounds walls(List<PlanRun> runs, List<Point> tank, Optional<PlanPanes> panes, Bounds heater) {
        List<Point> frame = seen.house().frame();
        double left = frame.get(0).xM();
        double right = frame.get(frame.size() - 1).xM();
        double back = heater.topM();
        double front = heater.bottomM();
        List<Point> all = new ArrayList<>(tank);
        runs.forEach(run -> all.addAll(run.pipe().points()));
        panes.ifPresent(shown -> {
            all.addAll(shown.corners());
            all.add(shown.ahead());
        });
        for (Point point : all) {
            left = Math.min(left, point.xM() - WALLS_M / 2);
            right = Math.max(right, point.xM() + WALLS_M / 2);
            back = Math.max(back, point.yM());
            front = Math.min(front, point.yM());
        }
        return new Bounds(left, front - WALLS_M, right, back + WALLS_M);
    }
}
