package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * One pane of uncoated glass.
 *
 * @param thicknessM thickness in m, 0.001 to 0.025
 * @param extinctionPerM how strongly it swallows sunlight, in 1/m, 0 to 200: 4 for white low-iron glass, 32 where the edge
 *     looks green (Duffie and Beckman, section 5.2)
 * @param refractiveIndex for sunlight, 1.1 to 2: 1.526 for glass (Duffie and Beckman, section 5.1)
 * @param emissivity of each face for the heat of warm surfaces, 0.02 to 1: 0.837 for uncoated glass (EN 673:2011)
 */
public record Glass(double thicknessM, double extinctionPerM, double refractiveIndex, double emissivity) {

    private static final Allowed THICKNESS = new Allowed(0.001, 0.025, "m");
    private static final Allowed EXTINCTION = new Allowed(0, 200, "1/m");
    private static final Allowed INDEX = new Allowed(1.1, 2, "");
    private static final Allowed EMISSIVITY = new Allowed(0.02, 1, "");

    /**
     * Ordinary 4 mm float glass as it comes out of old windows. The extinction is chosen so that one pane passes 0.83 of
     * the sun square on, what makers state for clear float of this thickness (common practice, no source).
     */
    public static final Glass SALVAGED_FLOAT = new Glass(0.004, 25, 1.526, 0.837);

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public Glass {
        new FaultList()
                .check("thicknessM", thicknessM, THICKNESS)
                .check("extinctionPerM", extinctionPerM, EXTINCTION)
                .check("refractiveIndex", refractiveIndex, INDEX)
                .check("emissivity", emissivity, EMISSIVITY)
                .refuseIfAny();
    }
}
