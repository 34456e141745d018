package loftcoil.engine.supply;

import loftcoil.engine.fault.Allowed;

/**
 * A tap, a hose end, a shower rose: where water leaves into the open.
 *
 * @param name its name, its own among all outlets of a supply
 * @param levelM level of its mouth above the finished floor in m, -20 to 20
 * @param outletK loss coefficient fully open, in velocity heads of the pipe before it, 0 to 1e10 (a narrow tap on a
 *     wide pipe counts many); the velocity head that the
 *     jet carries off is counted beside it
 */
public record Outlet(String name, double levelM, double outletK) implements SupplyEnd {

    /** The levels accepted, in m. */
    public static final Allowed LEVEL = new Allowed(-20, 20, "m");

    /** The loss coefficients accepted. */
    public static final Allowed LOSS = new Allowed(0, 1e10, "");

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public Outlet {
        LEVEL.require("levelM", levelM);
        LOSS.require("outletK", outletK);
    }
}
