package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Roof;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Window;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Fixture;
import loftcoil.engine.sheet.Drawing.Flue;
import loftcoil.engine.sheet.Drawing.House;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Panes;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.TankBox;

/**
 * Heater, flue, walls, roof and panes. Of these a design says how wide and high the flue is, how the panes are tilted and what shape the
 * roof has, no more.
 */
final class HouseFrame {

    private static final double MM_PER_M = 1000;
    private static final double ROUND_COIL_M = 0.14;
    private static final double BELOW_COIL_M = 0.2;
    private static final double ABOVE_COIL_M = 0.14;
    private static final double LEAST_HEATER_M = 0.5;
    private static final double USUAL_FLUE_M = 0.15;
    private static final double USUAL_ABOVE_ROOF_M = 0.6;
    private static final double MOST_ABOVE_ROOF_M = 1.0;
    private static final double BESIDE_HEATER_M = 0.2;
    /** Of a wall that stands farther off no more is drawn. */
    private static final double FARTHEST_WALL_M = 1.2;

    private static final double FLUE_IN_M = 0.04;
    private static final double ROUND_TANK_M = 0.14;
    private static final double HEADROOM_M = 0.5;
    private static final double USUAL_PITCH_DEG = 35;
    private static final double FLATTEST_DEG = 12;
    private static final double STEEPEST_DEG = 55;
    private static final double EAVES_M = 0.3;
    /** Rise per metre of a roof of one slope, 8°. */
    private static final double LOW_SLOPE = Math.tan(Math.toRadians(8));
    /** Such a roof and flat panes would meet too far off; less steep than 20° they do not. */
    private static final double LEAST_BEVEL = Math.tan(Math.toRadians(20));

    /** Share of the way from the eaves to the ridge beyond which pipes lie under the ridge. */
    private static final double NEAR_RIDGE = 0.9;

    private final Design design;
    private final TankBox tank;
    private final Bounds heater;
    private final Bounds fire;
    private final double flueWideM;
    private final double rightM;
    private final double highestTapM;
    private final double beyondTankM;
    private final List<Line> pipes;

    HouseFrame(Design design, TankBox tank, double inletX, List<Line> pipes, List<Line> taps) {
        this.design = design;
        this.tank = tank;
        this.flueWideM = flueSaid()
                .flatMap(said -> said.diameterMm().stream().boxed().findFirst())
                .map(mm -> mm / MM_PER_M)
                .orElse(USUAL_FLUE_M);
        this.heater = heater(inletX);
        this.fire = fire(inletX);
        this.highestTapM = design.taps().stream().mapToDouble(Tap::levelM).max().orElse(0);
        this.beyondTankM = taps.stream()
                .filter(line -> line.points().size() > 1)
                .mapToDouble(line -> line.points().get(1).xM() - tank.rightM())
                .max()
                .orElse(0);
        double tapsRight =
                taps.stream().mapToDouble(line -> line.end().xM()).max().orElse(tank.rightM());
        this.pipes = pipes;
        this.rightM = Math.max(tank.rightM(), tapsRight) + BESIDE_HEATER_M;
    }

    House house(List<Fixture> fixtures) {
        List<Point> frame = frame();
        return new House(frame, heater, fire, flue(frame), design.window().map(this::panes), fixtures);
    }

    private Optional<loftcoil.engine.design.Flue> flueSaid() {
        return design.safety().flatMap(Safety::flue);
    }

    private Bounds heater(double inletX) {
        double low = Math.min(design.coil().inletM(), design.coil().outletM());
        double high = Math.max(design.coil().inletM(), design.coil().outletM());
        double bottom = Math.min(0, low - BELOW_COIL_M);
        double winding = design.coil().windingMm().orElse(0) / MM_PER_M;
        double half = Math.max(inletX, Math.min(1.2, winding)) / 2 + ROUND_COIL_M;
        return new Bounds(
                inletX / 2 - half - flueWideM,
                bottom,
                inletX / 2 + half,
                Math.max(high + ABOVE_COIL_M, bottom + LEAST_HEATER_M));
    }

    private Bounds fire(double inletX) {
        double low = Math.min(design.coil().inletM(), design.coil().outletM());
        double bed = heater.bottomM() + 0.04;
        double flame = Math.max(0.12, Math.min(0.34, low - bed + 0.1));
        return new Bounds(inletX / 2 - 0.13, bed, inletX / 2 + 0.13, bed + flame);
    }

    /** Wall, roof from left to right, wall. */
    private List<Point> frame() {
        double left = leftWallM();
        Beside beside = beside();
        List<Point> frame = new ArrayList<>(List.of(new Point(left, Math.min(0, heater.bottomM()))));
        frame.addAll(
                switch (design.site().roof().orElse(Roof.GABLE)) {
                    case GABLE -> gable(left, beside);
                    case FLAT -> oneSlope(left, beside, 0);
                    case DOWN_TO_TANK -> oneSlope(left, beside, -LOW_SLOPE);
                    case UP_TO_TANK -> oneSlope(left, beside, LOW_SLOPE);
                });
        frame.add(new Point(beside.rightM(), 0));
        return frame;
    }

    /**
     * The roof on the outer side of the tank.
     *
     * @param corner where it has to pass above the tank
     * @param pitch how much it falls in each metre, as the panes do
     * @param bend where it turns level
     * @param rightM the wall
     */
    private record Beside(Point corner, double pitch, Point bend, double rightM) {}

    private Beside beside() {
        double pitch = Math.tan(Math.toRadians(Math.max(
                FLATTEST_DEG,
                Math.min(STEEPEST_DEG, design.window().map(Window::tiltDeg).orElse(USUAL_PITCH_DEG)))));
        double cornerX = tank.rightM() + beyondTankM + ROUND_TANK_M;
        double cornerY =
                Math.max(tank.topM() + ROUND_TANK_M, Math.max(heater.topM() + HEADROOM_M, highestTapM + HEADROOM_M));
        double right = Math.max(rightM, cornerX + EAVES_M);
        double eaves = Math.max(cornerY - (right - cornerX) * pitch, highestTapM + EAVES_M);
        Point bend = new Point(cornerX + (cornerY - eaves) / pitch, eaves);
        return new Beside(new Point(cornerX, cornerY), pitch, bend, right);
    }

    /** Eaves, ridge above the tank's inner edge, eaves. */
    private List<Point> gable(double left, Beside beside) {
        double ridgeX = Math.max(left + EAVES_M, tank.leftM());
        double ridgeY = beside.corner().yM() + (beside.corner().xM() - ridgeX) * beside.pitch();
        double leftEaves = Math.max(
                abovePipesM(left, new Point(ridgeX, ridgeY)),
                Math.max(
                        ridgeY - (ridgeX - left) * beside.pitch(), Math.min(ridgeY - 0.1, heater.topM() + HEADROOM_M)));
        return List.of(
                new Point(left, leftEaves),
                new Point(ridgeX, ridgeY),
                beside.bend(),
                new Point(beside.rightM(), beside.bend().yM()));
    }

    /** One slope above everything; where there are panes it ends at theirs, which comes down beside the tank. */
    private List<Point> oneSlope(double left, Beside beside, double risePerM) {
        Point corner = beside.corner();
        List<Point> under = new ArrayList<>(List.of(
                corner,
                new Point(tank.leftM(), tank.topM() + ROUND_TANK_M),
                new Point(left, heater.topM() + HEADROOM_M),
                new Point(beside.rightM(), beside.bend().yM())));
        pipes.forEach(pipe -> pipe.points().forEach(at -> under.add(new Point(at.xM(), at.yM() + ROUND_TANK_M))));
        design.window().ifPresent(window -> under.add(panes(window).upper()));
        double aboveCorner = under.stream()
                .mapToDouble(at -> at.yM() - corner.yM() - risePerM * (at.xM() - corner.xM()))
                .max()
                .orElseThrow();
        DoubleFunction<Point> slope = x -> new Point(x, corner.yM() + aboveCorner + risePerM * (x - corner.xM()));
        if (design.window().isEmpty()) {
            return List.of(slope.apply(left), slope.apply(beside.rightM()));
        }
        double meetX = corner.xM() - aboveCorner / (Math.max(LEAST_BEVEL, beside.pitch()) + risePerM);
        return List.of(
                slope.apply(left),
                slope.apply(Math.max(left + EAVES_M, meetX)),
                beside.bend(),
                new Point(beside.rightM(), beside.bend().yM()));
    }

    /** As far from heater and flue as what burns is said to be from each, so far as that is drawn. */
    private double leftWallM() {
        double heaterM =
                flueSaid().map(said -> drawnM(said.heaterToCombustibleMm())).orElse(BESIDE_HEATER_M);
        double flueM =
                flueSaid().map(said -> drawnM(said.flueToCombustibleMm())).orElse(0.0);
        return Math.min(heater.leftM() - heaterM, heater.leftM() + FLUE_IN_M - flueM);
    }

    private static double drawnM(double saidMm) {
        return Math.max(FLUE_IN_M, Math.min(FARTHEST_WALL_M, saidMm / MM_PER_M));
    }

    /** How high the eaves on the left must be for the roof to pass above all pipes. */
    private double abovePipesM(double left, Point ridge) {
        double eaves = 0;
        for (Line pipe : pipes) {
            for (Point at : pipe.points()) {
                double share = (at.xM() - left) / (ridge.xM() - left);
                if (share < NEAR_RIDGE) {
                    eaves = Math.max(eaves, (at.yM() + ROUND_TANK_M - ridge.yM() * share) / (1 - share));
                }
            }
        }
        return eaves;
    }

    private Flue flue(List<Point> frame) {
        double left = heater.leftM() + FLUE_IN_M;
        double roof = roofAboveM(frame, left + flueWideM / 2);
        double said = flueSaid().map(loftcoil.engine.design.Flue::topAboveRoofM).orElse(USUAL_ABOVE_ROOF_M);
        double top = roof + said;
        Optional<Double> height =
                flueSaid().flatMap(flue -> flue.heightM().stream().boxed().findFirst());
        if (height.isPresent()) {
            top = heater.topM() + height.get();
        }
        double drawn = Math.min(top, roof + MOST_ABOVE_ROOF_M);
        return new Flue(new Bounds(left, heater.topM(), left + flueWideM, drawn), drawn < top, opening(frame, left));
    }

    /** As wide in the roof as what burns keeps off the flue; it ends where the slope does. */
    private List<Point> opening(List<Point> frame, double flueLeft) {
        if (flueSaid().isEmpty()) {
            return List.of();
        }
        double clearM = drawnM(flueSaid().get().flueToCombustibleMm());
        double from = Math.max(frame.get(1).xM(), flueLeft - clearM);
        double to = Math.min(frame.get(2).xM(), flueLeft + flueWideM + clearM);
        return List.of(new Point(from, roofAboveM(frame, from)), new Point(to, roofAboveM(frame, to)));
    }

    private static double roofAboveM(List<Point> frame, double x) {
        for (int i = 1; i < frame.size() - 2; i++) {
            Point from = frame.get(i);
            Point to = frame.get(i + 1);
            if (x <= to.xM()) {
                double share = (x - from.xM()) / (to.xM() - from.xM());
                return from.yM() + share * (to.yM() - from.yM());
            }
        }
        return frame.get(frame.size() - 2).yM();
    }

    /** Before the tank, square to the line from its middle, as far off as its outline and the pipes beside it need. */
    private Panes panes(Window window) {
        double tilt = Math.toRadians(window.tiltDeg());
        double half = Math.sqrt(window.areaM2()) / 2;
        double off = Math.sin(tilt) * (tank.widthM() / 2 + beyondTankM)
                + Math.cos(tilt) * tank.heightM() / 2
                + ROUND_TANK_M * (Math.sin(tilt) + Math.cos(tilt));
        double x = tank.leftM() + tank.widthM() / 2 + Math.sin(tilt) * off;
        double y = tank.baseM() + tank.heightM() / 2 + Math.cos(tilt) * off;
        return new Panes(
                new Point(x - Math.cos(tilt) * half, y + Math.sin(tilt) * half),
                new Point(x + Math.cos(tilt) * half, y - Math.sin(tilt) * half),
                window.panes(),
                window.areaM2(),
                window.tiltDeg());
    }
}
