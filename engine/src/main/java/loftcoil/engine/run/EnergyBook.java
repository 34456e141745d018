package loftcoil.engine.run;

/**
 * The account of a stretch of time: solar + coil = used + loss + stored. Heat of water counts above the cold supply.
 *
 * @param solarKWh sun that the tank took up
 * @param coilKWh heat that the water in the coil took up
 * @param usedKWh heat delivered at the taps, above the cold supply
 * @param losses heat lost, by where it went, kWh
 * @param storedKWh what the tank holds more at the end than at the start
 */
public record EnergyBook(double solarKWh, double coilKWh, double usedKWh, Losses losses, double storedKWh) {

    /** All heat lost. */
    public double lossKWh() {
        return losses.total();
    }

    /** What the account misses to close: rounding. */
    public double gapKWh() {
        return solarKWh + coilKWh - usedKWh - lossKWh() - storedKWh;
    }
}
