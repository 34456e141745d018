package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * A layer of lagging around a pipe.
 *
 * @param material name in {@link LaggingTable}
 * @param thicknessM thickness in m, 0 to 0.5; zero is no lagging, whatever the material
 */
public record Lagging(String material, double thicknessM) {

    /** The thicknesses accepted, in m. */
    public static final Allowed THICKNESS = new Allowed(0, 0.5, "m");

    /** No lagging: bare pipe. */
    public static final Lagging NONE = new Lagging("none", 0);

    /**
     * Checks the thickness; the material is looked up where the lagging is used.
     *
     * @throws RefusedException where the thickness is outside its range or not a number
     */
    public Lagging {
        THICKNESS.require("thicknessM", thicknessM);
    }

    /** Whether there is any. */
    public boolean isNone() {
        return thicknessM == 0;
    }
}
