package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.FlueGas;

/**
 * Wood burning at a steady rate. A real fire swings by half its mean and more from one log to the next; this is the mean.
 *
 * @param wood the kind of wood
 * @param moisturePct water in the wood in percent of the whole mass, 0 to 60
 * @param burnKgPerH moist wood burnt an hour in kg/h, 0.1 to 20
 * @param excessAir air drawn through the fire over the least air needed, 1.1 to 6
 * @param unburntShare share of the net heating value that leaves unburnt as carbon monoxide, tar, soot and charcoal, 0 to 0.4
 */
public record Burn(Wood wood, double moisturePct, double burnKgPerH, double excessAir, double unburntShare) {

    /** The burn rates accepted, in kg/h. */
    public static final Allowed RATE = new Allowed(0.1, 20, "kg/h");

    /** The ratios of air to the least air accepted: below 1.1 wood does not burn clean, above 6 it goes out. */
    public static final Allowed EXCESS_AIR = new Allowed(1.1, 6, "");

    /** The unburnt shares accepted. */
    public static final Allowed UNBURNT = new Allowed(0, 0.4, "");

    /**
     * Air of a closed wood heater, 11 to 12 % oxygen in the dry flue gas: 2.1 to 2.3 (Centre for Biomass Technology, Wood for
     * Energy Production, 2002, table of typical excess air, from memory). Self-built heaters: 1.6 to 3.2, common practice,
     * no source.
     */
    public static final double COMMON_EXCESS_AIR = 2.2;

    /** Unburnt share of a brisk fire of dry wood; 0.02 to 0.15 in others. Common practice, no source. */
    public static final double COMMON_UNBURNT = 0.06;

    private static final double SECONDS_PER_H = 3600;

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number
     */
    public Burn {
        Wood.MOISTURE.require("moisturePct", moisturePct);
        RATE.require("burnKgPerH", burnKgPerH);
        EXCESS_AIR.require("excessAir", excessAir);
        UNBURNT.require("unburntShare", unburntShare);
    }

    /**
     * A fire with the common excess air and unburnt share.
     *
     * @param wood the kind of wood
     * @param moisturePct water in the wood in percent of the whole mass, 0 to 60
     * @param burnKgPerH moist wood burnt an hour in kg/h, 0.1 to 20
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static Burn common(Wood wood, double moisturePct, double burnKgPerH) {
        return new Burn(wood, moisturePct, burnKgPerH, COMMON_EXCESS_AIR, COMMON_UNBURNT);
    }

    /** The same fire with other excess air. */
    public Burn withExcessAir(double newExcessAir) {
        return new Burn(wood, moisturePct, burnKgPerH, newExcessAir, unburntShare);
    }

    /** The same fire with another unburnt share. */
    public Burn withUnburntShare(double newUnburntShare) {
        return new Burn(wood, moisturePct, burnKgPerH, excessAir, newUnburntShare);
    }

    /** Net heat in the wood that goes on, W. */
    public double fuelW() {
        return woodKgPerS() * wood.netJPerKg(moisturePct);
    }

    /** Heat that leaves unburnt, W. */
    public double unburntW() {
        return fuelW() * unburntShare;
    }

    /** Heat set free in the fire, W: {@link #fuelW} less {@link #unburntW}. */
    public double releasedW() {
        return fuelW() - unburntW();
    }

    /** Flue gas, kg/s; what stays unburnt is counted as if it had burnt. */
    public double flueKgPerS() {
        return woodKgPerS() * wood.flueKgPerKg(moisturePct, excessAir);
    }

    /** Combustion air, kg/s. */
    public double airKgPerS() {
        return woodKgPerS() * excessAir * wood.leastAirKgPerKg(moisturePct);
    }

    /** What the flue gas is made of. */
    public FlueGas flueGas() {
        return wood.flueGas(moisturePct, excessAir);
    }

    /**
     * Temperature of the gas if no heat left it: all released heat in the flue gas, above air and wood at 25 °C. Without
     * dissociation, which matters above about 1700 °C, where wood heaters do not get.
     *
     * @return °C
     */
    public double adiabaticC() {
        return flueGas().tempC(releasedW() / flueKgPerS());
    }

    private double woodKgPerS() {
        return burnKgPerH / SECONDS_PER_H;
    }
}
