package loftcoil.engine.caution;

/**
 * What a computed fire says about dangers.
 *
 * @param flueTopC temperature of the flue gas at the top of the flue, °C; as it leaves the heater where the flue is not described; at
 *     the low end of what is not known of the fire
 * @param fuelKW heat in the wood burnt, kW
 */
public record FireFacts(double flueTopC, double fuelKW) {}
