package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * The dark side of the tank behind the panes.
 *
 * @param absorptance share of sunlight it takes up, 0 to 1: matt black paint 0.92 to 0.97
 * @param emissivity for its own heat, 0.02 to 1: matt black paint about 0.95
 * @param gapM air space to the innermost pane in m, 0.003 to 0.2
 */
public record TankFace(double absorptance, double emissivity, double gapM) {

    private static final Allowed ABSORPTANCE = new Allowed(0, 1, "");
    private static final Allowed EMISSIVITY = new Allowed(0.02, 1, "");
    private static final double MATT_BLACK = 0.95;

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public TankFace {
        new FaultList()
                .check("absorptance", absorptance, ABSORPTANCE)
                .check("emissivity", emissivity, EMISSIVITY)
                .check("gapM", gapM, AirGap.WIDTH)
                .refuseIfAny();
    }

    /**
     * A tank painted matt black.
     *
     * @param absorptance share of sunlight it takes up, 0 to 1
     * @param gapM air space to the innermost pane in m, 0.003 to 0.2
     * @throws RefusedException where either is outside its range or not a number
     */
    public static TankFace painted(double absorptance, double gapM) {
        return new TankFace(absorptance, MATT_BLACK, gapM);
    }
}
