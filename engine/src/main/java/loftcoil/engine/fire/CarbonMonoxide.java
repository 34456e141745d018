package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.gas.FlueGas;

/**
 * Heat that leaves as carbon monoxide, from its share in the dry flue gas at 13 % oxygen, as plates and test reports of wood
 * heaters give it. Heat of combustion 283.0 kJ/mol (difference of the heats of formation of CO and CO₂ in the JANAF
 * tables). The gas is deadly: a flue that leaks or will not draw kills without smell.
 */
public final class CarbonMonoxide {

    /** The shares accepted, in percent of the dry gas at 13 % oxygen; EN 13240 allows up to 1. */
    public static final Allowed SHARE = new Allowed(0, 10, "%");

    private static final double HEAT_J_PER_MOL = 283.0e3;
    private static final double OXYGEN_PCT = 13;
    private static final double AIR_OXYGEN_PCT = 20.95;

    private CarbonMonoxide() {}

    /**
     * Share of the wood's net heat lost as carbon monoxide.
     *
     * @param wood the kind of wood
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @param carbonMonoxidePct share in the dry gas at 13 % oxygen in percent of the volume, 0 to 10
     * @return 0 to 1
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public static double lostShare(Wood wood, double moisturePct, double carbonMonoxidePct) {
        double share = SHARE.require("carbonMonoxidePct", carbonMonoxidePct) / 100;
        FlueGas least = wood.flueGas(moisturePct, 1);
        double leastMol = wood.flueKgPerKg(moisturePct, 1) / least.kgPerMol();
        double dryMol = leastMol * (1 - least.waterVapour());
        // Dry gas of complete combustion thinned with air until it holds 13 % oxygen.
        double thinned = dryMol * AIR_OXYGEN_PCT / (AIR_OXYGEN_PCT - OXYGEN_PCT);
        return share * thinned * HEAT_J_PER_MOL / wood.netJPerKg(moisturePct);
    }
}
