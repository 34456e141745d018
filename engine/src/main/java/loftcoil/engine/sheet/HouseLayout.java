package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Fixture;
import loftcoil.engine.sheet.Drawing.Level;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Port;
import loftcoil.engine.sheet.Drawing.Role;
import loftcoil.engine.sheet.Drawing.Run;
import loftcoil.engine.sheet.Drawing.TankBox;

/**
 * Places everything of the drawing. The coil's outlet is always at x = 0 and its inlet right of it, towards the tank, so that the hot
 * pipe lies outside the cold one and neither crosses the other. Every place is a continuous function of the design: a little more of
 * anything moves things a little.
 */
final class HouseLayout {

    /** Widest coil that is drawn, and the narrowest that keeps both pipes apart, m. */
    private static final double COIL_WIDE_M = 0.42;

    private static final double COIL_NARROW_M = 0.12;

    private final Design design;
    private final Headings headings;
    private final Tank tank;
    private final TankBox box;
    /** Where the coil's inlet is. */
    private final double inletX;

    private final double viewDeg;
    private final List<Double> hotSteps;
    private final List<Double> coldSteps;

    HouseLayout(Design design, Headings headings) {
        this.design = design;
        this.headings = headings;
        this.tank = design.tank();
        this.viewDeg = headings.wholeDeg(design.hotLegs());
        double hotRunM = runM(design.hotLegs());
        double coldRunM = runM(design.coldLegs());
        this.inletX = Math.max(COIL_NARROW_M, Math.min(COIL_WIDE_M, hotRunM + coldRunM));
        double hotEndX = Math.min(acrossM(design.hotLegs()), coldRunM + inletX);
        this.box = box(hotEndX);
        this.hotSteps = steps(design.hotLegs(), hotEndX);
        this.coldSteps = steps(design.coldLegs(), leftWall(tank.coldPortLevelM()) - inletX);
    }

    Drawing draw() {
        List<Line> pipes = new ArrayList<>(cold());
        pipes.add(CoilShape.line(design.coil(), inletX));
        pipes.addAll(hot());
        List<Port> ports = List.of(
                new Port("cold port", new Point(leftWall(tank.coldPortLevelM()), tank.coldPortLevelM())),
                new Port("return port", new Point(leftWall(tank.returnPortLevelM()), tank.returnPortLevelM())),
                new Port("draw port", new Point(rightWall(drawLevelM()), drawLevelM())));
        List<Line> taps = new TapPipes(design, ports.get(2).at(), box.rightM()).lines();
        List<Fixture> fixtures = fixtures();
        HouseFrame frame = new HouseFrame(design, box, inletX, pipes, taps);
        Drawing.House house = frame.house(fixtures);
        Drawing.Plan plan = new HousePlan(design, headings, new HousePlan.Seen(pipes, box, depthM(), house, inletX)).plan();
        return new Drawing(pipes, box, ports, levels(fixtures, taps), taps, house, bounds(pipes, taps, house), plan);
    }

    private TankBox box(double hotEndX) {
        boolean lying = tank.kind().orElse(Tank.Kind.UPRIGHT_CYLINDER) == Tank.Kind.LYING_CYLINDER;
        double widthM = lying ? tank.heightM() : tank.shape().volumeM3() / tank.heightM() / depthM();
        TankBox atZero = new TankBox(0, tank.baseM(), widthM, tank.heightM(), tank.waterlineLevelM(), lying);
        double leftM = hotEndX - atZero.insetM(tank.returnPortLevelM());
        return new TankBox(leftM, tank.baseM(), widthM, tank.heightM(), tank.waterlineLevelM(), lying);
    }

    /** How deep the tank goes into the picture, m, so that volume, height and this give the width that is seen. */
    private double depthM() {
        double footprintM2 = tank.shape().volumeM3() / tank.heightM();
        return switch (tank.kind().orElse(Tank.Kind.UPRIGHT_CYLINDER)) {
            case UPRIGHT_CYLINDER -> Math.sqrt(footprintM2 * Math.PI / 4);
            case LYING_CYLINDER -> footprintM2 / tank.heightM();
            case BOX -> tank.lengthM().orElse(Math.sqrt(footprintM2));
        };
    }

    private double leftWall(double levelM) {
        return box.leftM() + box.insetM(levelM);
    }

    private double rightWall(double levelM) {
        return box.rightM() - box.insetM(levelM);
    }

    private double drawLevelM() {
        return tank.baseM() + tank.drawPortM();
    }

    /** Steps to the right of legs that together have to lead that far; what they lack or have over is shared by their level runs. */
    private List<Double> steps(List<Leg> legs, double wantedM) {
        double over = wantedM - acrossM(legs);
        double shares = legs.stream().mapToDouble(HouseLayout::share).sum();
        return legs.stream()
                .map(leg -> headings.acrossM(leg, viewDeg) + over * share(leg) / shares)
                .toList();
    }

    /** A leg that stands upright gives way only where none has a level run. */
    private static double share(Leg leg) {
        return leg.levelRunM() + leg.lengthM() / 1000;
    }

    private double acrossM(List<Leg> legs) {
        return legs.stream().mapToDouble(leg -> headings.acrossM(leg, viewDeg)).sum();
    }

    private static double runM(List<Leg> legs) {
        return legs.stream().mapToDouble(Leg::levelRunM).sum();
    }

    private List<Line> cold() {
        Point at = new Point(leftWall(tank.coldPortLevelM()), tank.coldPortLevelM());
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < design.coldLegs().size(); i++) {
            Leg leg = design.coldLegs().get(i);
            Point next = new Point(at.xM() - coldSteps.get(i), at.yM() + leg.riseM());
            lines.add(new Line(Role.COLD, "C" + (i + 1), leg.name(), List.of(at, next), run(leg)));
            at = next;
        }
        return lines;
    }

    private List<Line> hot() {
        Point at = new Point(0, design.coil().outletM());
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < design.hotLegs().size(); i++) {
            Leg leg = design.hotLegs().get(i);
            Point next = new Point(at.xM() + hotSteps.get(i), at.yM() + leg.riseM());
            lines.add(new Line(Role.HOT, "H" + (i + 1), leg.name(), List.of(at, next), run(leg)));
            at = next;
        }
        return lines;
    }

    private static Run run(Leg leg) {
        return new Run(
                leg.tube(), leg.lengthM(), leg.riseM(), leg.lagging().filter(choice -> choice.thicknessMm() > 0));
    }

    private List<Fixture> fixtures() {
        TankFixtures at = new TankFixtures(tank, box);
        return design.safety().stream()
                .flatMap(safety -> Stream.of(
                                safety.vent().flatMap(at::vent),
                                safety.coldFeed().flatMap(at::overflow),
                                safety.coldFeed().flatMap(at::feed))
                        .flatMap(Optional::stream))
                .toList();
    }

    private List<Level> levels(List<Fixture> fixtures, List<Line> taps) {
        List<Level> levels = new ArrayList<>(List.of(
                new Level(0, "floor", 0),
                new Level(design.coil().inletM(), "coil inlet", inletX),
                new Level(design.coil().outletM(), "coil outlet", 0),
                new Level(tank.baseM(), "tank base", box.rightM()),
                new Level(tank.coldPortLevelM(), "cold port", leftWall(tank.coldPortLevelM())),
                new Level(tank.returnPortLevelM(), "return port", leftWall(tank.returnPortLevelM())),
                new Level(drawLevelM(), "draw port", rightWall(drawLevelM())),
                new Level(tank.waterlineLevelM(), "waterline", rightWall(tank.waterlineLevelM()))));
        fixtures.stream()
                .filter(fixture -> fixture.kind() == Fixture.Kind.OPEN_VENT)
                .map(fixture -> fixture.points().get(fixture.points().size() - 1))
                .forEach(open -> levels.add(new Level(open.yM(), "vent’s open end", open.xM())));
        taps.stream()
                .filter(pipe -> !pipe.mark().equals(TapPipes.TRUNK))
                .forEach(pipe -> levels.add(new Level(
                        pipe.end().yM(),
                        pipe.mark() + " " + pipe.name(),
                        pipe.end().xM())));
        levels.sort(Comparator.comparingDouble(Level::heightM));
        return levels;
    }

    private Bounds bounds(List<Line> pipes, List<Line> taps, Drawing.House house) {
        List<Point> points = new ArrayList<>(house.frame());
        pipes.forEach(pipe -> points.addAll(pipe.points()));
        taps.forEach(pipe -> points.addAll(pipe.points()));
        house.fixtures().forEach(fixture -> {
            points.addAll(fixture.points());
            fixture.box().ifPresent(vessel -> corners(vessel, points));
        });
        corners(house.heater(), points);
        corners(house.flue().pipe(), points);
        house.panes().ifPresent(panes -> points.addAll(List.of(panes.upper(), panes.lower())));
        points.add(new Point(box.leftM(), box.baseM()));
        points.add(new Point(box.rightM(), box.topM()));
        points.add(new Point(0, 0));
        var across =
                points.stream().flatMapToDouble(p -> DoubleStream.of(p.xM())).summaryStatistics();
        var up = points.stream().flatMapToDouble(p -> DoubleStream.of(p.yM())).summaryStatistics();
        return new Bounds(across.getMin(), up.getMin(), across.getMax(), up.getMax());
    }

    private static void corners(Bounds of, List<Point> points) {
        points.add(new Point(of.leftM(), of.bottomM()));
        points.add(new Point(of.rightM(), of.topM()));
    }
}
