package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Numeral;

/**
 * Whether levels, lengths and rises fit together: ports inside the tank and in the right order, no leg that rises more
 * than it is long, rises that lead from port to coil and from coil to port. A number that is not there is passed over: it
 * has its own fault already.
 */
final class GeometryFaults {

    /** Rises may leave this gap, m: the rounding of a tape measure over a few legs. */
    private static final double CLOSE_ENOUGH_M = 0.005;

    /** Sides of a box, length of a lying cylinder. */
    private static final Allowed SIDE = new Allowed(0.05, 10, "m");

    private static final double LEAST_WINDING_TIMES = 3;

    /** Decimals of a length in m. */
    private static final int MILLIMETRES = 3;

    private final List<Fault> faults = new ArrayList<>();

    private GeometryFaults() {}

    static List<Fault> of(Design design) {
        GeometryFaults found = new GeometryFaults();
        found.tank(design.tank());
        found.coil(design.coil());
        found.legs("coldLegs", design.coldLegs());
        found.legs("hotLegs", design.hotLegs());
        found.closing(design);
        return found.faults;
    }

    private void tank(Tank tank) {
        sides(tank);
        within("tank.waterlineM", tank.waterlineM(), tank.heightM());
        within("tank.returnPortM", tank.returnPortM(), tank.heightM());
        below("tank.coldPortM", tank.coldPortM(), tank.returnPortM(), "it must be below the return port");
        if (tank.returnPortM() >= tank.waterlineM()) {
            String why = "the return port must stay covered by water, or the loop is broken";
            String allowed = "more than the return port's " + metres(tank.returnPortM()) + " m";
            faults.add(new Fault("tank.waterlineM", metres(tank.waterlineM()), allowed, why));
        } else {
            below("tank.drawPortM", tank.drawPortM(), tank.waterlineM(), "above the waterline the taps would draw air");
        }
    }

    /** The side that follows from what the tank holds, its height and the length of a box; sizes out of range have a fault already. */
    private void sides(Tank tank) {
        boolean sized = tank.volumeL() >= 10 && tank.volumeL() <= 5000 && tank.heightM() >= 0.1 && tank.heightM() <= 5;
        if (!sized) {
            return;
        }
        boolean byLength =
                tank.kind().equals(Optional.of(Tank.Kind.BOX)) && tank.lengthM().isPresent();
        SIDE.faultIn("", followingM(tank))
                .ifPresent(side -> faults.add(new Fault(
                        byLength ? "tank.lengthM" : "tank.heightM",
                        metres(byLength ? tank.lengthM().getAsDouble() : tank.heightM()),
                        "one that leaves sides of " + metres(SIDE.low()) + " to " + metres(SIDE.high()) + " m",
                        "the other side follows from what the tank holds")));
    }

    /** Length of a lying cylinder, width of a box; of an upright cylinder its diameter, which no range is set for, counts as allowed. */
    private static double followingM(Tank tank) {
        double sectionM2 = tank.volumeL() / 1000 / tank.heightM();
        return switch (tank.kind().orElse(Tank.Kind.UPRIGHT_CYLINDER)) {
            case UPRIGHT_CYLINDER -> SIDE.high();
            case LYING_CYLINDER -> sectionM2 / (Math.PI / 4 * tank.heightM());
            case BOX -> tank.lengthM().isPresent() ? sectionM2 / tank.lengthM().getAsDouble() : Math.sqrt(sectionM2);
        };
    }

    private void coil(Coil coil) {
        if (Math.abs(coil.riseM()) > coil.lengthM()) {
            faults.add(new Fault(
                    "coil.lengthM",
                    metres(coil.lengthM()),
                    "at least " + metres(Math.abs(coil.riseM())) + " m",
                    "its ends are that far apart in height"));
        }
        double leastM = TubeTable.find(coil.tube()).map(Tube::outerM).orElse(0.0) * LEAST_WINDING_TIMES;
        if (coil.windingM() > 0 && coil.windingM() < leastM) {
            faults.add(new Fault(
                    "coil.windingMm",
                    Numeral.typedTo(0, coil.windingM() * 1000),
                    "at least " + Numeral.typedTo(0, leastM * 1000) + " mm",
                    "a tube wound tighter than three times its diameter kinks"));
        }
    }

    private void legs(String side, List<Leg> legs) {
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            String path = side + "[" + i + "].riseM";
            if (!Double.isNaN(leg.lengthM()) && !(Math.abs(leg.riseM()) <= leg.lengthM())) {
                String allowed = metres(-leg.lengthM()) + " to " + metres(leg.lengthM()) + " m";
                faults.add(new Fault(path, metres(leg.riseM()), allowed, "a leg cannot rise more than its length"));
            }
        }
    }

    private void closing(Design design) {
        double cold = rises(design.coldLegs());
        double hot = rises(design.hotLegs());
        double coldGoal = design.coil().inletM() - design.tank().coldPortLevelM();
        double hotGoal = design.tank().returnPortLevelM() - design.coil().outletM();
        if (!design.coldLegs().isEmpty() && Math.abs(cold - coldGoal) > CLOSE_ENOUGH_M) {
            open(
                    "coldLegs",
                    new Gap(cold, coldGoal),
                    "from the tank's cold port at " + metres(design.tank().coldPortLevelM())
                            + " m to the coil's inlet at "
                            + metres(design.coil().inletM()) + " m above the floor");
        }
        if (!design.hotLegs().isEmpty() && Math.abs(hot - hotGoal) > CLOSE_ENOUGH_M) {
            open(
                    "hotLegs",
                    new Gap(hot, hotGoal),
                    "from the coil's outlet at " + metres(design.coil().outletM())
                            + " m to the tank's return port at "
                            + metres(design.tank().returnPortLevelM())
                            + " m above the floor");
        }
    }

    private record Gap(double risesM, double goalM) {}

    private void open(String side, Gap gap, String why) {
        faults.add(new Fault(
                side,
                "rises that add up to " + metres(gap.risesM()) + " m",
                metres(gap.goalM()) + " m, within " + metres(CLOSE_ENOUGH_M) + " m",
                why));
    }

    private static double rises(List<Leg> legs) {
        return legs.stream().mapToDouble(Leg::riseM).sum();
    }

    private void within(String path, double value, double heightM) {
        if (heightM > 0) {
            new Allowed(0, heightM, "m")
                    .faultIn(path, value)
                    .map(fault -> new Fault(path, fault.given(), fault.allowed(), "it must be inside the tank"))
                    .ifPresent(faults::add);
        }
    }

    /** A port may be anywhere from the base up to, but not at, the thing above it. */
    private void below(String path, double value, double above, String why) {
        if (!(value >= 0) || value >= above) {
            String allowed = "0 to less than " + metres(above) + " m";
            faults.add(new Fault(path, metres(value), allowed, why));
        }
    }

    private static String metres(double value) {
        return Numeral.typedTo(MILLIMETRES, value);
    }
}
