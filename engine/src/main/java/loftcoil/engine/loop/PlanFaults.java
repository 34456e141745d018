package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Numeral;

/** Every reason why a loop as planned cannot be computed. */
final class PlanFaults {

    /** Rises may leave this gap, m: the rounding of a tape measure over four or five legs. */
    static final double CLOSE_ENOUGH_M = 0.005;

    private static final Allowed LENGTH = new Allowed(0.001, 1000, "m");
    private static final Allowed LEVEL = new Allowed(-100, 100, "m");
    private static final Allowed HEAT = new Allowed(0, 100_000, "W");
    private static final Allowed COLUMN = new Allowed(900, 1050, "kg/m³");
    private static final Allowed COUNT = new Allowed(0, 1000, "");

    private final List<Fault> faults = new ArrayList<>();

    private PlanFaults() {}

    static void refuse(CircuitPlan plan, Setting setting) {
        PlanFaults found = new PlanFaults();
        found.look(plan, setting);
        if (!found.faults.isEmpty()) {
            throw new RefusedException(found.faults);
        }
    }

    private void look(CircuitPlan plan, Setting setting) {
        if (plan.coldLegs().isEmpty() || plan.hotLegs().isEmpty()) {
            faults.add(new Fault("legs", "none", "at least one cold and one hot leg", ""));
        }
        plan.forward().forEach(this::look);
        range("coldPortM", LEVEL, plan.heights().coldPortM());
        range("returnPortM", LEVEL, plan.heights().returnPortM());
        range("waterlineM", LEVEL, plan.heights().waterlineM());
        range("altitudeM", Atmosphere.ALTITUDE, setting.altitudeM());
        range("tankC", Water.TEMPERATURE, setting.tankC());
        range("heatW", HEAT, setting.firing().heatW());
        if (faults.isEmpty()) {
            // Of a uniform tank it follows from the temperature, whose fault would be told twice.
            range("columnKgPerM3", COLUMN, setting.columnKgPerM3());
            together(plan, setting);
        }
    }

    private void look(Pipe pipe) {
        range(pipe.name() + ".lengthM", LENGTH, pipe.lengthM());
        if (!(Math.abs(pipe.riseM()) <= pipe.lengthM())) {
            String allowed = metres(-pipe.lengthM()) + " to " + metres(pipe.lengthM()) + " m";
            faults.add(new Fault(
                    pipe.name() + ".riseM", metres(pipe.riseM()), allowed, "a pipe cannot rise more than its length"));
        }
        range(pipe.name() + ".aroundC", PipeLoss.AROUND, pipe.aroundC());
        for (Map.Entry<String, Integer> fitting : pipe.fittings().entrySet()) {
            if (FittingTable.find(fitting.getKey()).isEmpty()) {
                faults.add(FittingTable.unknown(pipe.name() + ".fittings", fitting.getKey()));
            }
            range(pipe.name() + ".fittings." + fitting.getKey(), COUNT, fitting.getValue());
        }
        String material = pipe.lagging().material();
        if (!pipe.lagging().isNone() && LaggingTable.find(material).isEmpty()) {
            faults.add(LaggingTable.unknown(pipe.name() + ".lagging.material", material));
        }
    }

    private void together(CircuitPlan plan, Setting setting) {
        LoopHeights at = plan.heights();
        if (at.returnPortM() < at.coldPortM() || at.waterlineM() < at.returnPortM()) {
            String given = metres(at.coldPortM()) + ", " + metres(at.returnPortM()) + ", " + metres(at.waterlineM());
            faults.add(new Fault("heights", given, "cold port, return port, waterline from low to high", ""));
        }
        double rises = plan.forward().stream().mapToDouble(Pipe::riseM).sum();
        double between = at.returnPortM() - at.coldPortM();
        if (!(Math.abs(rises - between) <= CLOSE_ENOUGH_M)) {
            String why = "the rises must lead from the cold port to the return port";
            faults.add(new Fault("rises", metres(rises) + " m in all", metres(between) + " m", why));
        }
        double boilingC = new Surface(Atmosphere.pressurePa(setting.altitudeM()), at.waterlineM(), 1000)
                .boilingC(at.waterlineM());
        if (!(setting.tankC() < boilingC)) {
            String why = "water boils there at this altitude";
            String allowed = "below " + Numeral.typedTo(1, boilingC) + " °C";
            faults.add(new Fault("tankC", Numeral.typed(setting.tankC()), allowed, why));
        }
    }

    private void range(String path, Allowed allowed, double value) {
        Optional<Fault> fault = allowed.faultIn(path, value);
        fault.ifPresent(faults::add);
    }

    private static String metres(double value) {
        return Numeral.typedTo(3, value);
    }
}
