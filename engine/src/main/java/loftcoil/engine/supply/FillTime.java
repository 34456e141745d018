package loftcoil.engine.supply;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/** How long a tap alone takes to fill a vessel. */
public sealed interface FillTime {

    /** The volumes accepted, in L. */
    Allowed LITRES = new Allowed(0.01, 10_000, "L");

    /**
     * It fills.
     *
     * @param minutes time it takes in min
     */
    record Fills(double minutes) implements FillTime {}

    /** The tap does not run at all. */
    record Never() implements FillTime {}

    /**
     * With the tank kept full.
     *
     * @param flow what the tap does
     * @param litres volume to fill in L, 0.01 to 10 000
     * @throws RefusedException where the volume is outside its range or not a number
     */
    static FillTime atFullTank(TapFlow flow, double litres) {
        LITRES.require("litres", litres);
        return flow.flowLPerMin() > 0 ? new Fills(litres / flow.flowLPerMin()) : new Never();
    }
}
