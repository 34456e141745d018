package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.CoilJoints;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Role;
import loftcoil.engine.sheet.Drawing.Run;

/**
 * The coil as it is seen through the door of the fire: wound, bent to and fro, or zigzag with elbows, from its inlet on the right up to
 * its outlet on the left. It is drawn with as many passes as its length makes, but never so many that they touch: those of a long coil
 * lie behind each other.
 */
final class CoilShape {

    private static final double MM_PER_M = 1000;
    /** Middle to middle of two passes, in diameters of the tube. */
    private static final double APART = 2.1;

    private static final int MOST_PASSES = 25;
    private static final int POINTS_A_PASS = 12;
    private static final double WIDEST_WINDING_M = 1.2;

    private CoilShape() {}

    static Line line(Coil coil, double inletX) {
        Run run = new Run(coil.tube(), coil.lengthM(), coil.riseM(), Optional.empty());
        return new Line(Role.COIL, "F", "coil", points(coil, inletX), run);
    }

    private static List<Point> points(Coil coil, double inletX) {
        boolean wound = coil.windingMm().isPresent();
        double wideM = wound ? Math.min(WIDEST_WINDING_M, coil.windingMm().getAsDouble() / MM_PER_M) : inletX;
        double aPassM = wound ? Math.PI * coil.windingMm().getAsDouble() / MM_PER_M / 2 : wideM;
        int passes = passes(coil, aPassM);
        boolean bent = CoilJoints.count(coil) == 0;
        int each = bent ? POINTS_A_PASS : 1;
        List<Point> points = new ArrayList<>();
        points.add(new Point(inletX, coil.inletM()));
        for (int i = 1; i < passes * each; i++) {
            double done = (double) i / (passes * each);
            double x = inletX / 2 + wideM / 2 * Math.cos(Math.PI * passes * done);
            points.add(new Point(x, coil.inletM() + coil.riseM() * done));
        }
        points.add(new Point(0, coil.outletM()));
        return points;
    }

    /** An odd number: the coil begins on one side and ends on the other. */
    private static int passes(Coil coil, double aPassM) {
        double outerM = TubeTable.require("coil.tube", coil.tube()).outerM();
        int room = (int) Math.min(MOST_PASSES, Math.abs(coil.riseM()) / (APART * outerM));
        int made = (int) Math.round(coil.lengthM() / aPassM);
        int passes = Math.max(1, Math.min(room, made));
        return passes % 2 == 1 ? passes : passes - 1;
    }
}
