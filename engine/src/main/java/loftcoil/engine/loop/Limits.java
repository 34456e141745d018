package loftcoil.engine.loop;

/**
 * Between which temperatures the water of each run stays liquid and computable, and how near the last march came.
 * Boiling is judged at the pressure of the air plus the column from the waterline down, of water as warm as the tank;
 * a hot column above the point weighs less by a few hundred pascals, which is under 0.2 K.
 */
final class Limits {

    /** Upper end of the property formulas (IAPWS SR6-08), °C. */
    static final double FORMULA_C = 110;

    private static final int PARTS = 4;

    private final Segment[] segments;
    private final double[][] boilingC;

    private double boilRoomK;
    private double warmestC;
    private double coldestC;
    private int nearest;
    private int nearestPart;
    private int direction;

    Limits(Segment[] segments, double[][] boilingC) {
        this.segments = segments;
        this.boilingC = boilingC;
    }

    /** Boiling temperature at the start, three points inside, and the end of each run, °C. */
    static double[][] boilingC(Segment[] segments, Surface surface) {
        double[][] boilingC = new double[segments.length][PARTS + 1];
        for (int i = 0; i < segments.length; i++) {
            for (int part = 0; part <= PARTS; part++) {
                boilingC[i][part] = surface.boilingC(levelM(segments[i], part));
            }
        }
        return boilingC;
    }

    void begin(int newDirection) {
        boilRoomK = Double.POSITIVE_INFINITY;
        warmestC = Double.NEGATIVE_INFINITY;
        coldestC = Double.POSITIVE_INFINITY;
        direction = newDirection;
    }

    /** Water entering a run in the direction of flow; needed for the first one only, the others enter as they leave. */
    void entering(int i, double tempC) {
        look(i, direction == Direction.FORWARD ? 0 : PARTS, tempC);
    }

    /** Water leaving a run in the direction of flow. */
    void leaving(int i, double tempC) {
        look(i, direction == Direction.FORWARD ? PARTS : 0, tempC);
    }

    /** Water that is warmed along a leg by very hot surroundings can be nearest to boiling between the leg's ends. */
    void seenInside(int i, Warming warming) {
        for (int part = 1; part < PARTS; part++) {
            look(i, direction == Direction.FORWARD ? part : PARTS - part, warming.tempC((double) part / PARTS));
        }
    }

    /** Exponential approach to the temperature around. */
    record Warming(double aroundC, double apartK, double units) {
        double tempC(double along) {
            return aroundC + apartK * Math.exp(-units * along);
        }
    }

    /** How far all water of the last march stays from boiling, from 110 °C and from freezing, K. */
    double boilMarginK() {
        return Math.min(Math.min(boilRoomK, FORMULA_C - warmestC), coldestC);
    }

    /** Whether it is freezing, not boiling, that is nearest. */
    boolean freezesFirst() {
        return coldestC < Math.min(boilRoomK, FORMULA_C - warmestC);
    }

    BoilMargin boilMargin() {
        return new BoilMargin(
                boilRoomK, where(), levelM(segments[nearest], nearestPart), boilingC[nearest][nearestPart]);
    }

    private String where() {
        String part = nearestPart == 0 ? "start" : nearestPart == PARTS ? "end" : "middle";
        if (segments[nearest].coil) {
            return nearestPart == 0 ? "inlet of the coil" : nearestPart == PARTS ? "outlet of the coil" : "the coil";
        }
        return part + " of '" + segments[nearest].pipe.name() + "'";
    }

    private void look(int i, int part, double tempC) {
        double room = boilingC[i][part] - tempC;
        if (room < boilRoomK) {
            boilRoomK = room;
            nearest = i;
            nearestPart = part;
        }
        if (tempC > warmestC) {
            warmestC = tempC;
        }
        if (tempC < coldestC) {
            coldestC = tempC;
        }
    }

    private static double levelM(Segment segment, int part) {
        return segment.startLevelM + segment.riseM * part / PARTS;
    }
}
