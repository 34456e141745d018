package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * What a loop has to do.
 *
 * @param tankC temperature of the whole tank at which it is judged, °C; 0 to 90
 * @param leastFlowKgPerS least flow, fire lit, kg/s; 0 to 1
 * @param leastBoilMarginK least distance from boiling, fire lit, K; 0 to 100
 * @param mostNightLossW most heat the loop may take from the tank, fire out, W; 0 to 10 000
 */
public record Aims(double tankC, double leastFlowKgPerS, double leastBoilMarginK, double mostNightLossW) {

    private static final Allowed TANK = new Allowed(0, 90, "°C");
    private static final Allowed FLOW = new Allowed(0, 1, "kg/s");
    private static final Allowed MARGIN = new Allowed(0, 100, "K");
    private static final Allowed LOSS = new Allowed(0, 10_000, "W");

    /**
     * Checks the aims.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public Aims {
        List<Fault> faults = new ArrayList<>();
        TANK.faultIn("tankC", tankC).ifPresent(faults::add);
        FLOW.faultIn("leastFlowKgPerS", leastFlowKgPerS).ifPresent(faults::add);
        MARGIN.faultIn("leastBoilMarginK", leastBoilMarginK).ifPresent(faults::add);
        LOSS.faultIn("mostNightLossW", mostNightLossW).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
