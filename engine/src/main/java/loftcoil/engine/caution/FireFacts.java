package loftcoil.engine.caution;

/**
 * What a computed fire says about dangers.
 *
 * @param flueTopC temperature of the flue gas at the top of the flue, as best known, °C; as it leaves the heater where the flue is not
 *     described
 * @param flueTopLowC the same at the low end of what is not known of the fire, °C
 * @param fuelKW heat in the wood burnt, kW
 */
public record FireFacts(double flueTopC, double flueTopLowC, double fuelKW) {}
