package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;

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

    /**
     * A pipe as a line through points.
     *
     * @param role what it is
     * @param name what the builder calls it
     * @param points from its near end to its far end
     * @param run what is written beside it
     */
    public record Line(Role role, String name, List<Point> points, Run run) {
        /** Keeps a copy of the points. */
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * What a builder has to know of a pipe.
     *
     * @param tube name of its tube
     * @param lengthM length along the tube, m
     * @param riseM level of its far end less that of its near end, m
     * @param lagging lagging; empty for a bare tube
     */
    public record Run(String tube, double lengthM, double riseM, Optional<LaggingChoice> lagging) {

        private static final double UPRIGHT_RUN_M = 0.01;

        /** Level run, m. */
        public double levelRunM() {
            return Math.sqrt(Math.max(0, lengthM * lengthM - riseM * riseM));
        }

        /**
         * Rise for each metre of level run, mm/m; negative where it falls in the direction of flow. Empty where it stands
         * upright: its level run is under a centimetre.
         */
        public OptionalDouble slopeMmPerM() {
            return levelRunM() < UPRIGHT_RUN_M ? OptionalDouble.empty() : OptionalDouble.of(1000 * riseM / levelRunM());
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
        return new ElevationLayout(design.checked()).draw();
    }
}
