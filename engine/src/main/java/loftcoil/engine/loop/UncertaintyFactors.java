package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Factors on what is least sure about a loop, for asking how far the answer moves. All 1: as computed.
 *
 * @param roughnessTimes on the roughness of the tube; 0 to 1000: old pipe with scale has some hundred times that of new
 * @param fittingsTimes on the losses of fittings, joints and ports; 0.1 to 10
 * @param heatLossTimes on the heat that the legs lose; 0.1 to 10: gaps, brackets and damp in the lagging
 */
public record UncertaintyFactors(double roughnessTimes, double fittingsTimes, double heatLossTimes) {

    private static final Allowed ROUGHNESS = new Allowed(0, 1000, "");
    private static final Allowed TIMES = new Allowed(0.1, 10, "");

    /**
     * Checks the factors.
     *
     * @throws RefusedException where a factor is outside its range or not a number; all faults at once
     */
    public UncertaintyFactors {
        List<Fault> faults = new ArrayList<>();
        ROUGHNESS.faultIn("roughnessTimes", roughnessTimes).ifPresent(faults::add);
        TIMES.faultIn("fittingsTimes", fittingsTimes).ifPresent(faults::add);
        TIMES.faultIn("heatLossTimes", heatLossTimes).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
