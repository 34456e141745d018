package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Heights on a tank, all above its base in m.
 *
 * @param coldM middle of the port that feeds the loop
 * @param returnM middle of the port where the loop comes back
 * @param drawM middle of the port that feeds the taps
 * @param waterlineM water level when full
 * @param boreM inner diameter of the loop's ports, 0 to 0.2
 */
public record Ports(double coldM, double returnM, double drawM, double waterlineM, double boreM) {

    private static final Allowed BORE = new Allowed(0, 0.2, "m");

    /**
     * Checks that the heights are numbers from 0 to the tallest tank.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public Ports {
        List<Fault> faults = faultsWithin(TankShape.HEIGHT.high(), coldM, returnM, drawM, waterlineM);
        BORE.faultIn("boreM", boreM).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /**
     * Refuses heights that are not inside a tank, all at once.
     *
     * @throws RefusedException where a height is above the brim
     */
    void requireWithin(TankShape shape) {
        List<Fault> faults = faultsWithin(shape.heightM(), coldM, returnM, drawM, waterlineM);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    private static List<Fault> faultsWithin(double highM, double... heights) {
        String[] names = {"coldM", "returnM", "drawM", "waterlineM"};
        Allowed within = new Allowed(0, highM, "m");
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < names.length; i++) {
            within.faultIn(names[i], heights[i]).ifPresent(faults::add);
        }
        return faults;
    }
}
