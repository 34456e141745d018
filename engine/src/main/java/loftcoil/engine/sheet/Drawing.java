package loftcoil.engine.sheet;

import java.util.List;
import loftcoil.engine.design.Design;

/**
 * The loop in elevation, to scale: x to the right, y up from the floor, both in metres. Each leg has its true length and
 * rise; which way its level run goes is not part of a design, so the runs are folded left or right in the way that lets
 * both ends meet the tank.
 *
 * @param pipes cold legs, coil and hot legs in the forward order
 * @param tank the tank seen from the front
 * @param ports the three ports
 * @param levels heights worth a label, from low to high
 * @param bounds the least box around everything, the floor included
 */
public record Drawing(List<Line> pipes, TankBox tank, List<Port> ports, List<Level> levels, Bounds bounds) {

    /** Keeps copies of the lists. */
    public Drawing {
        pipes = List.copyOf(pipes);
        ports = List.copyOf(ports);
        levels = List.copyOf(levels);
    }

    /** What a pipe is. */
    public enum Role {
        /** A leg from the tank to the coil. */
        COLD,
        /** The tube in the fire. */
        COIL,
        /** A leg from the coil to the tank. */
        HOT
    }

    /** A point, m. */
    public record Point(double xM, double yM) {}

    /** A pipe as a line through points. */
    public record Line(Role role, String name, List<Point> points) {
        /** Keeps a copy of the points. */
        public Line {
            points = List.copyOf(points);
        }
    }

    /** The tank: left edge and base, width (of an upright cylinder of its volume), height, level of the waterline, m. */
    public record TankBox(double leftM, double baseM, double widthM, double heightM, double waterlineM) {}

    /** A port of the tank. */
    public record Port(String label, Point at) {}

    /** A height above the floor with its label. */
    public record Level(double heightM, String label) {}

    /** A box, m. */
    public record Bounds(double leftM, double bottomM, double rightM, double topM) {}

    /**
     * Draws a design.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException where the design has a fault
     */
    public static Drawing of(Design design) {
        return new Draughtsman(design.checked()).draw();
    }
}
