package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Where a tank's centre of mass sits in a dwelling on wheels.
 *
 * @param heightM height above the road in m, 0 to 6
 * @param aheadM ahead of the axle, toward the hitch, in m, -10 to 15
 * @param asideM off the middle line, either way, in m, -2 to 2
 */
public record TankPlace(double heightM, double aheadM, double asideM) {

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public TankPlace {
        List<Fault> faults = new ArrayList<>();
        new Allowed(0, 6, "m").faultIn("heightM", heightM).ifPresent(faults::add);
        new Allowed(-10, 15, "m").faultIn("aheadM", aheadM).ifPresent(faults::add);
        new Allowed(-2, 2, "m").faultIn("asideM", asideM).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
