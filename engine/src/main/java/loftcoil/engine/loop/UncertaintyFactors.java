package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Friction;

/**
 * Factors on what is least sure about a loop, for asking how far the answer moves. All 1: as computed.
 *
 * @param roughnessTimes on the roughness of the tube; 0 to 1000: old pipe with scale has some hundred times that of new
 * @param fittingsTimes on the losses of fittings, joints and ports; 0.1 to 10
 * @param heatLossTimes on the heat that the legs lose; 0.1 to 10: gaps, brackets and damp in the lagging
 * @param frictionTimes on the friction of straight tube; 0.1 to 10
 * @param transitionTimes on the Reynolds numbers at which flow turns turbulent; 0.5 to 2: bends and burrs make it turn sooner
 */
public record UncertaintyFactors(
        double roughnessTimes,
        double fittingsTimes,
        double heatLossTimes,
        double frictionTimes,
        double transitionTimes) {

    private static final Allowed ROUGHNESS = new Allowed(0, 1000, "");
    private static final Allowed TIMES = new Allowed(0.1, 10, "");

    /** Friction of straight tube, and where it turns turbulent, as computed. */
    public UncertaintyFactors(double roughnessTimes, double fittingsTimes, double heatLossTimes) {
        this(roughnessTimes, fittingsTimes, heatLossTimes, 1, 1);
    }

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
        TIMES.faultIn("frictionTimes", frictionTimes).ifPresent(faults::add);
        Friction.TRANSITION.faultIn("transitionTimes", transitionTimes).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
