package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.pipe.TubeTable;

/**
 * One straight piece of pipe as somebody walks along it with a tape, from fitting to fitting.
 *
 * @param name what the builder calls it
 * @param way which way it leads
 * @param lengthM length along the tube, m; 0.01 to 100
 * @param slopeMmPerM of a piece that leads along: how much its far end is higher for each metre of it, mm/m, less than 0 where it falls;
 *     −1000 to 1000; of an upright one it is passed over
 * @param headingDeg of a piece that leads along: the compass direction it leads in, clockwise from north, degrees; 0 to 360; empty
 *     where nobody took it
 * @param elbows90 elbows of 90° at its near end
 * @param elbows45 elbows of 45° at its near end
 * @param tube name of its tube
 * @param lagging its lagging; empty for a bare tube
 * @param aroundC temperature around it while the fire burns, °C; −30 to 250
 * @param aroundFireOutC the same with the fire out, °C; empty where it is that of the room then
 * @param outdoors whether it runs outdoors, where the air of the place is round it and the two temperatures are passed over
 * @param measured true where a tape lay beside it; false where its length is a guess
 */
public record WalkedPipe(
        String name,
        Way way,
        double lengthM,
        double slopeMmPerM,
        OptionalDouble headingDeg,
        int elbows90,
        int elbows45,
        String tube,
        Optional<LaggingChoice> lagging,
        double aroundC,
        OptionalDouble aroundFireOutC,
        boolean outdoors,
        boolean measured) {

    private static final String ELBOW_90 = "elbow90";
    private static final String ELBOW_45 = "elbow45";

    /** What an upright piece may miss the plumb line by, and what is the same to a tape, m. */
    private static final double UPRIGHT_M = 1e-6;

    private static final double MM_PER_M = 1000;
    private static final Allowed SLOPE = new Allowed(-1000, 1000, "mm/m");
    private static final Allowed HEADING = new Allowed(0, 360, "degrees");
    private static final Allowed ELBOWS = new Allowed(0, 50, "elbows");

    /** What a leg of a design may have holds for a piece of pipe too. */
    private static final String LEG = "hotLegs[].";

    /**
     * The name of a tube in the tube table.
     *
     * @param path where it was told, for a refusal
     * @param typed a name, or outer diameter by wall as in {@code 22x1.0}
     * @throws loftcoil.engine.fault.RefusedException where there is no such tube
     */
    public static String tubeNamed(String path, String typed) {
        return TubeTable.require(path, typed).name();
    }

    /**
     * What is wrong with its values, each by itself; how a tube is named is {@link #tubeNamed}'s to say.
     *
     * @param path makes the path of a value's name
     */
    public List<Fault> faults(UnaryOperator<String> path) {
        List<Fault> faults = new ArrayList<>();
        ofLeg("lengthM").faultIn(path.apply("lengthM"), lengthM).ifPresent(faults::add);
        SLOPE.faultIn(path.apply("slopeMmPerM"), slopeMmPerM).ifPresent(faults::add);
        headingDeg.stream().forEach(heading -> HEADING.faultIn(path.apply("headingDeg"), heading)
                .ifPresent(faults::add));
        ELBOWS.faultIn(path.apply("elbows90"), elbows90).ifPresent(faults::add);
        ELBOWS.faultIn(path.apply("elbows45"), elbows45).ifPresent(faults::add);
        lagging.ifPresent(coat -> coat(coat, path, faults));
        ofLeg("aroundC").faultIn(path.apply("aroundC"), aroundC).ifPresent(faults::add);
        aroundFireOutC.stream().forEach(around -> ofLeg("aroundFireOutC")
                .faultIn(path.apply("aroundFireOutC"), around)
                .ifPresent(faults::add));
        return faults;
    }

    private static void coat(LaggingChoice coat, UnaryOperator<String> path, List<Fault> faults) {
        List<String> materials = field("lagging.material").options();
        if (!materials.contains(coat.material())) {
            faults.add(new KnownNames("lagging", materials).unknown(path.apply("laggingMaterial"), coat.material()));
        }
        ofLeg("lagging.thicknessMm")
                .faultIn(path.apply("laggingMm"), coat.thicknessMm())
                .ifPresent(faults::add);
    }

    private static Allowed ofLeg(String name) {
        return field(name).range().orElseThrow();
    }

    private static DesignField field(String name) {
        return DesignFields.at(LEG + name).orElseThrow();
    }

    /** Level of its far end above that of its near end, m. */
    public double riseM() {
        return switch (way) {
            case UP -> lengthM;
            case DOWN -> -lengthM;
            case ALONG -> lengthM * slopeMmPerM / MM_PER_M;
        };
    }

    /** Its length seen from above, m. */
    public double levelRunM() {
        return way == Way.ALONG ? Math.sqrt(Math.max(0, lengthM * lengthM - riseM() * riseM())) : 0;
    }

    /** The same piece with its far end this much higher, m: an upright one becomes longer or shorter, one along gets another slope. */
    WalkedPipe raisedM(double upM) {
        return switch (way) {
            case UP -> with(lengthM + upM, slopeMmPerM);
            case DOWN -> with(lengthM - upM, slopeMmPerM);
            case ALONG -> with(lengthM, slopeMmPerM + upM / lengthM * MM_PER_M);
        };
    }

    private WalkedPipe with(double newLengthM, double newSlopeMmPerM) {
        return new WalkedPipe(
                name,
                way,
                newLengthM,
                newSlopeMmPerM,
                headingDeg,
                elbows90,
                elbows45,
                tube,
                lagging,
                aroundC,
                aroundFireOutC,
                outdoors,
                measured);
    }

    /** Whether nothing of a leg would be lost if it were told as a piece that was walked. */
    static boolean canBe(Leg leg) {
        return Set.of(ELBOW_90, ELBOW_45).containsAll(leg.fittings().keySet());
    }

    /** Whether a design's leg is this piece as it was walked. */
    boolean isAs(Leg leg) {
        boolean alike = Math.abs(leg.lengthM() - lengthM) < UPRIGHT_M && Math.abs(leg.riseM() - riseM()) < UPRIGHT_M;
        return alike
                && canBe(leg)
                && leg.fittings().getOrDefault(ELBOW_90, 0) == elbows90
                && leg.fittings().getOrDefault(ELBOW_45, 0) == elbows45
                && leg.tube().equals(tube)
                && leg.lagging().equals(lagging)
                && leg.aroundC() == aroundC
                && leg.aroundFireOutC().equals(aroundFireOutC)
                && leg.isOutdoors() == outdoors;
    }

    /** The same piece as a leg that was made of it has become; upright as long as all of it is. */
    WalkedPipe as(Leg leg) {
        boolean upright = Math.abs(Math.abs(leg.riseM()) - leg.lengthM()) < UPRIGHT_M;
        Way led = upright ? leg.riseM() < 0 ? Way.DOWN : Way.UP : Way.ALONG;
        return new WalkedPipe(
                leg.name(),
                led,
                leg.lengthM(),
                led == Way.ALONG ? leg.riseM() / leg.lengthM() * MM_PER_M : 0,
                led == Way.ALONG ? headingDeg : OptionalDouble.empty(),
                leg.fittings().getOrDefault(ELBOW_90, 0),
                leg.fittings().getOrDefault(ELBOW_45, 0),
                leg.tube(),
                leg.lagging(),
                leg.aroundC(),
                leg.aroundFireOutC(),
                leg.isOutdoors(),
                measured);
    }

    /** The leg of a design that it is. */
    Leg leg() {
        Map<String, Integer> fittings = new TreeMap<>();
        if (elbows90 > 0) {
            fittings.put(ELBOW_90, elbows90);
        }
        if (elbows45 > 0) {
            fittings.put(ELBOW_45, elbows45);
        }
        return new Leg(
                name,
                tube,
                lengthM,
                riseM(),
                fittings,
                lagging,
                aroundC,
                aroundFireOutC,
                outdoors ? Optional.of(true) : Optional.empty());
    }
}
