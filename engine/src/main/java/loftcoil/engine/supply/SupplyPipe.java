package loftcoil.engine.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.Friction;
import loftcoil.engine.pipe.Tube;

/**
 * A length of one tube with its fittings.
 *
 * @param tube the tube
 * @param lengthM length along its middle line in m, 0.01 to 500
 * @param roughnessM height of the roughness of its wall in m, 0 to 0.005 and at most a twentieth of the bore
 * @param otherK loss coefficient of anything not in the table of fittings, in velocity heads, 0 to 10 000
 * @param fittings how many of each, by the keys of {@link FittingTable}
 */
public record SupplyPipe(Tube tube, double lengthM, double roughnessM, double otherK, Map<String, Integer> fittings) {

    /** The lengths accepted, in m. */
    public static final Allowed LENGTH = new Allowed(0.01, 500, "m");

    private static final Allowed OTHER_K = new Allowed(0, 10_000, "");
    private static final Allowed COUNT = new Allowed(0, 1000, "");
    private static final double ROUGHEST_M = 0.005;

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number, or a fitting is unknown; all faults at once
     */
    public SupplyPipe {
        fittings = Map.copyOf(fittings);
        List<Fault> faults = new ArrayList<>();
        LENGTH.faultIn("lengthM", lengthM).ifPresent(faults::add);
        double roughest = Math.min(ROUGHEST_M, tube.boreM() * Friction.ROUGHNESS.high());
        new Allowed(0, roughest, "m").faultIn("roughnessM", roughnessM).ifPresent(faults::add);
        OTHER_K.faultIn("otherK", otherK).ifPresent(faults::add);
        new TreeMap<>(fittings).forEach((key, count) -> {
            if (FittingTable.find(key).isEmpty()) {
                faults.add(FittingTable.unknown("fittings." + key, key));
            }
            COUNT.faultIn("fittings." + key, count).ifPresent(faults::add);
        });
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /**
     * A length of new tube of a metal.
     *
     * @param tube the tube
     * @param lengthM length in m, 0.01 to 500
     * @param fittings how many of each, by the keys of {@link FittingTable}
     * @throws RefusedException where a value is outside its range or not a number, or a fitting is unknown
     */
    public static SupplyPipe of(Tube tube, double lengthM, Map<String, Integer> fittings) {
        return new SupplyPipe(tube, lengthM, tube.metal().roughnessM(), 0, fittings);
    }

    /** The same pipe with the sharp-edged way out of a tank at its start, unless it has one. */
    public SupplyPipe fromTank() {
        if (fittings.containsKey("entrance")) {
            return this;
        }
        Map<String, Integer> more = new TreeMap<>(fittings);
        more.put("entrance", 1);
        return new SupplyPipe(tube, lengthM, roughnessM, otherK, more);
    }

    /** Water it holds in m³. */
    public double volumeM3() {
        return tube.volumeM3PerM() * lengthM;
    }
}
