package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;

/**
 * The house in elevation, to scale: x to the right, y up from the floor, both in metres. Heater and flue stand on the left, the tank on
 * the right with the panes beyond it. Every level and rise is true. Which way a level run goes is not part of a design unless it was
 * surveyed, so both pipes are led from the heater to the wall of the tank; the one with more level run than the other is drawn short,
 * as one that leads towards who looks at it. Walls and roof are a frame round what is designed; of a
 * design they follow the shape of the roof and no measure.
 *
 * @param pipes cold legs, coil and hot legs in the forward order
 * @param tank the tank seen from the side
 * @param ports cold port, return port and draw port, on the wall of the tank
 * @param levels heights worth a label, from low to high
 * @param taps the pipes to the taps, trunk first; their levels are true, their length across is not
 * @param house what stands round the loop
 * @param bounds the least box around everything, the floor included
 * @param plan the same parts seen from above
 */
public record Drawing(
        List<Line> pipes,
        TankBox tank,
        List<Port> ports,
        List<Level> levels,
        List<Line> taps,
        House house,
        Bounds bounds,
        Plan plan) {

    /** Keeps copies of the lists. */
    public Drawing {
        pipes = List.copyOf(pipes);
        ports = List.copyOf(ports);
        levels = List.copyOf(levels);
        taps = List.copyOf(taps);
    }

    private static final double SHORT_M = 0.03;

    /** What a pipe is. */
    public enum Role {
        /** A leg from the tank to the coil. */
        COLD,
        /** The tube in the fire. */
        COIL,
        /** A leg from the coil to the tank. */
        HOT,
        /** A pipe to a tap. */
        TAP
    }

    /** A point, m. */
    public record Point(double xM, double yM) {}

    /**
     * A pipe as a line through points.
     *
     * @param role what it is
     * @param mark its short name in lists: C1, C2 … for the cold legs, F for the coil in the fire, H1 … for the hot legs, T0 for the
     *     trunk, T1 … for the pipes to the taps
     * @param name what the builder calls it
     * @param points from its near end to its far end
     * @param run what is written beside it
     */
    public record Line(Role role, String mark, String name, List<Point> points, Run run) {
        /** Keeps a copy of the points. */
        public Line {
            points = List.copyOf(points);
        }

        /** Its near end. */
        public Point start() {
            return points.get(0);
        }

        /** Its far end. */
        public Point end() {
            return points.get(points.size() - 1);
        }

        /** Whether a leg leads so far out of the picture that it is drawn more than 3 cm short. */
        public boolean drawnShort() {
            return (role == Role.COLD || role == Role.HOT)
                    && Math.abs(Math.abs(end().xM() - start().xM()) - run.levelRunM()) > SHORT_M;
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

    /**
     * The tank: left edge and base, width, height, level of the waterline, m.
     *
     * @param round whether it is seen as a circle, as a lying cylinder is
     */
    public record TankBox(double leftM, double baseM, double widthM, double heightM, double waterlineM, boolean round) {

        /** Its right edge, m. */
        public double rightM() {
            return leftM + widthM;
        }

        /** Its top, m. */
        public double topM() {
            return baseM + heightM;
        }

        /** How far its wall stands in from its outermost edge at a level above the floor, m. */
        public double insetM(double levelM) {
            double radius = heightM / 2;
            double fromMiddle = Math.min(radius, Math.abs(levelM - baseM - radius));
            return round ? widthM / 2 - Math.sqrt(radius * radius - fromMiddle * fromMiddle) * widthM / heightM : 0;
        }
    }

    /**
     * What stands round the loop.
     *
     * @param frame wall, roof and wall, from the floor on the left to the floor on the right; no measure of the design but how far the left
     *     wall keeps from heater and flue
     * @param heater the body of the heater
     * @param fire the bed of the fire, where its flame stands
     * @param flue the flue pipe
     * @param panes the panes before the tank; empty where there are none
     * @param fixtures vent, overflow and feed of the tank, as far as somebody said what they are
     */
    public record House(
            List<Point> frame, Bounds heater, Bounds fire, Flue flue, Optional<Panes> panes, List<Fixture> fixtures) {
        /** Keeps copies of the lists. */
        public House {
            frame = List.copyOf(frame);
            fixtures = List.copyOf(fixtures);
        }
    }

    /**
     * The flue.
     *
     * @param pipe the pipe as far as it is drawn
     * @param cut whether it goes on above the drawing
     * @param opening the part of the roof that is kept free of what burns, so far from the flue on both sides as was said; empty where
     *     nobody said
     */
    public record Flue(Bounds pipe, boolean cut, List<Point> opening) {
        /** Keeps a copy of the opening. */
        public Flue {
            opening = List.copyOf(opening);
        }
    }

    /**
     * The panes, seen from their edge; of their area alone nobody can tell how high they are, so they are drawn as a square.
     *
     * @param upper their upper edge
     * @param lower their lower edge
     * @param count how many
     * @param areaM2 area that lets sun in, m²
     * @param tiltDeg tilt from the level, degrees
     */
    public record Panes(Point upper, Point lower, int count, double areaM2, double tiltDeg) {}

    /**
     * Something at the tank that is neither pipe of the loop nor tap.
     *
     * @param kind what it is
     * @param points its pipe, from the tank on
     * @param box a vessel that belongs to it; empty for none
     */
    public record Fixture(Kind kind, List<Point> points, Optional<Bounds> box) {

        /** Keeps a copy of the points. */
        public Fixture {
            points = List.copyOf(points);
        }

        /** What it is. */
        public enum Kind {
            /** A pipe with an open end. */
            OPEN_VENT("open vent"),
            /** A lid that lies loose. */
            LOOSE_LID("loose lid"),
            /** Where the tank runs over. */
            OVERFLOW("overflow"),
            /** A valve with a float in the tank. */
            FLOAT_VALVE("float valve"),
            /** A small cistern beside the tank. */
            FEED_CISTERN("feed cistern");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** What it is called. */
            public String words() {
                return words;
            }
        }
    }

    /**
     * The house seen from above: x to the right as in elevation, y away from who looks at that, m. A surveyed run leads where the compass
     * said. Where nobody took one, both pipes are led straight to the tank, and a run that is longer than that way goes out and back
     * square, so that it has its length and still ends where it has to.
     *
     * @param runs the pipes of the loop in the order of the elevation
     * @param walls a frame round all of it; only how far it stands from flue and heater is told
     * @param heater the body of the heater; as deep as it is wide, which is no measure
     * @param flue the flue cut through
     * @param tank outline of the tank
     * @param ports cold port, return port and draw port
     * @param panes the panes; empty where there are none
     * @param northDeg direction of true north, counted from straight up clockwise, degrees; empty where neither panes nor pipes tell it
     * @param surveyed whether the runs lead as a compass said
     * @param missM how far from the tank the cold pipe ends, m; 0 where it meets it
     */
    public record Plan(
            List<PlanRun> runs,
            Bounds walls,
            Bounds heater,
            Bounds flue,
            List<Point> tank,
            List<Port> ports,
            Optional<PlanPanes> panes,
            OptionalDouble northDeg,
            boolean surveyed,
            double missM) {
        /** Keeps copies of the lists. */
        public Plan {
            runs = List.copyOf(runs);
            tank = List.copyOf(tank);
            ports = List.copyOf(ports);
        }
    }

    /**
     * A pipe of the loop seen from above.
     *
     * @param pipe the pipe; its points are those of the plan
     * @param headingDeg the direction it leads in, clockwise from north, degrees; empty where nobody took it or where it stands upright
     */
    public record PlanRun(Line pipe, OptionalDouble headingDeg) {

        private static final double POINT_M = 0.01;

        /** Whether it is seen as a point, since it stands upright. */
        public boolean upright() {
            return pipe.role() != Role.COIL && pipe.run().levelRunM() < POINT_M;
        }
    }

    /**
     * The panes seen from above.
     *
     * @param corners their four corners
     * @param middle their middle
     * @param ahead a point so far before them as an arrow is long, in the direction they face
     * @param azimuthDeg that direction, clockwise from north, degrees
     */
    public record PlanPanes(List<Point> corners, Point middle, Point ahead, double azimuthDeg) {
        /** Keeps a copy of the corners. */
        public PlanPanes {
            corners = List.copyOf(corners);
        }
    }

    /** A port of the tank. */
    public record Port(String label, Point at) {}

    /**
     * A height above the floor with its label.
     *
     * @param heightM above the floor, m
     * @param label what is so high
     * @param atM where that is, m from the left as everything
     */
    public record Level(double heightM, String label, double atM) {}

    /** A box, m. */
    public record Bounds(double leftM, double bottomM, double rightM, double topM) {

        /** The least box round both. */
        public Bounds with(Bounds other) {
            return new Bounds(
                    Math.min(leftM, other.leftM),
                    Math.min(bottomM, other.bottomM),
                    Math.max(rightM, other.rightM),
                    Math.max(topM, other.topM));
        }
    }

    /**
     * Draws a design.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException where the design has a fault
     */
    public static Drawing of(Design design) {
        return of(design, Headings.UNKNOWN);
    }

    /**
     * Draws a design whose pipes were surveyed.
     *
     * @param design a design
     * @param headings which way its level runs lead
     * @throws loftcoil.engine.fault.RefusedException where the design has a fault
     */
    public static Drawing of(Design design, Headings headings) {
        return new HouseLayout(design.checked(), headings).draw();
    }
}
