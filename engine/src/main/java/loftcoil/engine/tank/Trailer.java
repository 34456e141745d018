package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * A dwelling on wheels without its water tank, as the statics of a tank high in its roof need it. One axle, or a group taken
 * as one at its middle, and a hitch in front of it.
 *
 * @param massKg mass without the tank in kg, 50 to 20 000
 * @param centreHeightM height of its centre of mass above the road in m, 0.1 to 4
 * @param centreAheadM its centre of mass ahead of the axle, toward the hitch, in m, -5 to 10
 * @param hitchAheadM hitch ahead of the axle in m, 0.5 to 15
 * @param trackM distance between the middles of left and right tyres in m, 0.5 to 3
 */
public record Trailer(double massKg, double centreHeightM, double centreAheadM, double hitchAheadM, double trackM) {

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number; all faults at once
     */
    public Trailer {
        List<Fault> faults = new ArrayList<>();
        new Allowed(50, 20_000, "kg").faultIn("massKg", massKg).ifPresent(faults::add);
        new Allowed(0.1, 4, "m").faultIn("centreHeightM", centreHeightM).ifPresent(faults::add);
        new Allowed(-5, 10, "m").faultIn("centreAheadM", centreAheadM).ifPresent(faults::add);
        new Allowed(0.5, 15, "m").faultIn("hitchAheadM", hitchAheadM).ifPresent(faults::add);
        new Allowed(0.5, 3, "m").faultIn("trackM", trackM).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}
