package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Level;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Port;
import loftcoil.engine.sheet.Drawing.Role;
import loftcoil.engine.sheet.Drawing.Run;
import loftcoil.engine.sheet.Drawing.TankBox;

/** Lays out one drawing: coil at the origin, cold side and hot side folded so that both reach the tank. */
final class ElevationLayout {

    private static final double WIDEST_PASS_M = 0.5;

    private final Design design;
    private final double tankWidthM;

    ElevationLayout(Design design) {
        this.design = design;
        this.tankWidthM = design.tank().shape().frontM();
    }

    Drawing draw() {
        Line coil = coil();
        double outletX = coil.points().get(coil.points().size() - 1).xM();
        List<Leg> coldUp = new ArrayList<>(design.coldLegs());
        Collections.reverse(coldUp);
        Folding folding = Folding.of(runs(coldUp), runs(design.hotLegs()), new Folding.Span(outletX, tankWidthM));
        double coldX = folding.coldPortX();
        double hotX = folding.hotPortX();
        List<Line> pipes = new ArrayList<>();
        pipes.addAll(cold(coldX, folding.cold()));
        pipes.add(coil);
        pipes.addAll(hot(outletX, folding.hot()));
        Tank tank = design.tank();
        double leftM = (coldX + hotX - tankWidthM) / 2;
        TankBox box = new TankBox(leftM, tank.baseM(), tankWidthM, tank.heightM(), tank.waterlineLevelM());
        List<Port> ports = List.of(
                new Port("cold port", new Point(coldX, tank.coldPortLevelM())),
                new Port("return port", new Point(hotX, tank.returnPortLevelM())),
                new Port("draw port", new Point(leftM + tankWidthM, tank.baseM() + tank.drawPortM())));
        return new Drawing(pipes, box, ports, levels(), bounds(pipes, box));
    }

    /** The coil as an odd number of passes, so that it leaves on the other side; their lengths add up to its length. */
    private Line coil() {
        double length = design.coil().lengthM();
        double rise = design.coil().riseM();
        double widest = Math.min(WIDEST_PASS_M, tankWidthM);
        int passes = 1;
        while (length / passes > widest) {
            passes += 2;
        }
        double width = Math.sqrt(Math.max(0, length * length - rise * rise)) / passes;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= passes; i++) {
            points.add(new Point(i % 2 * width, design.coil().inletM() + rise * i / passes));
        }
        Run run = new Run(design.coil().tube(), length, rise, Optional.empty());
        return new Line(Role.COIL, "coil", points, run);
    }

    private List<Line> cold(double portX, List<Double> stepsUp) {
        List<Line> lines = new ArrayList<>();
        Point at = new Point(portX, design.tank().coldPortLevelM());
        List<Leg> legs = design.coldLegs();
        for (int i = 0; i < legs.size(); i++) {
            // The folding counts from the coil upwards: walked down, each step goes the other way.
            double step = -stepsUp.get(legs.size() - 1 - i);
            Point next = new Point(at.xM() + step, at.yM() + legs.get(i).riseM());
            lines.add(new Line(Role.COLD, legs.get(i).name(), List.of(at, next), run(legs.get(i))));
            at = next;
        }
        return lines;
    }

    private List<Line> hot(double outletX, List<Double> steps) {
        List<Line> lines = new ArrayList<>();
        Point at = new Point(outletX, design.coil().outletM());
        List<Leg> legs = design.hotLegs();
        for (int i = 0; i < legs.size(); i++) {
            Point next = new Point(at.xM() + steps.get(i), at.yM() + legs.get(i).riseM());
            lines.add(new Line(Role.HOT, legs.get(i).name(), List.of(at, next), run(legs.get(i))));
            at = next;
        }
        return lines;
    }

    private static Run run(Leg leg) {
        return new Run(
                leg.tube(), leg.lengthM(), leg.riseM(), leg.lagging().filter(choice -> choice.thicknessMm() > 0));
    }

    private List<Level> levels() {
        Tank tank = design.tank();
        List<Level> levels = new ArrayList<>(List.of(
                new Level(0, "floor"),
                new Level(design.coil().inletM(), "coil inlet"),
                new Level(design.coil().outletM(), "coil outlet"),
                new Level(tank.baseM(), "tank base"),
                new Level(tank.coldPortLevelM(), "cold port"),
                new Level(tank.returnPortLevelM(), "return port"),
                new Level(tank.waterlineLevelM(), "waterline")));
        levels.sort(Comparator.comparingDouble(Level::heightM));
        return levels;
    }

    private static Bounds bounds(List<Line> pipes, TankBox tank) {
        DoubleStream.Builder x = DoubleStream.builder();
        DoubleStream.Builder y = DoubleStream.builder();
        for (Line pipe : pipes) {
            for (Point point : pipe.points()) {
                x.add(point.xM());
                y.add(point.yM());
            }
        }
        x.add(tank.leftM()).add(tank.leftM() + tank.widthM());
        y.add(0).add(tank.baseM()).add(tank.baseM() + tank.heightM());
        var across = x.build().summaryStatistics();
        var up = y.build().summaryStatistics();
        return new Bounds(across.getMin(), up.getMin(), across.getMax(), up.getMax());
    }

    private static List<Double> runs(List<Leg> legs) {
        return legs.stream().map(Leg::levelRunM).toList();
    }
}
