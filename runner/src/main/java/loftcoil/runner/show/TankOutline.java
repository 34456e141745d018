package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Point;

/** The outline of a tank as points, round or square, to its top or to the waterline. */
final class TankOutline {

    private static final int STEPS = 24;

    private TankOutline() {}

    static List<Point> wall(Drawing.TankBox tank) {
        return upTo(tank, tank.topM());
    }

    static List<Point> water(Drawing.TankBox tank) {
        return upTo(tank, tank.waterlineM());
    }

    private static List<Point> upTo(Drawing.TankBox tank, double topM) {
        int steps = tank.round() ? STEPS : 1;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double level = tank.baseM() + (topM - tank.baseM()) * i / steps;
            points.add(new Point(tank.leftM() + tank.insetM(level), level));
        }
        for (int i = steps; i >= 0; i--) {
            double level = tank.baseM() + (topM - tank.baseM()) * i / steps;
            points.add(new Point(tank.rightM() - tank.insetM(level), level));
        }
        return points;
    }
}
