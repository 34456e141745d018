package loftcoil.engine.caution;

import java.util.OptionalDouble;

/**
 * What a computed fire says about dangers.
 *
 * @param flueTopC temperature of the flue gas at the top of the flue, °C; as it leaves the heater where the flue is not described;
 *     empty where it cannot be told, as for a coil that is said to take more than the fire gives
 * @param fuelKW heat in the wood burnt, kW
 */
public record FireFacts(OptionalDouble flueTopC, double fuelKW) {

    /** A fire with flue gas of a known temperature. */
    public FireFacts(double flueTopC, double fuelKW) {
        this(OptionalDouble.of(flueTopC), fuelKW);
    }
}
