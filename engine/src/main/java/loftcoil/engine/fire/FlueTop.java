package loftcoil.engine.fire;

/**
 * Flue gas at the top of the flue.
 *
 * @param tempC its temperature, °C
 * @param draughtPa the pull of the whole flue before friction, Pa; negative where the gas is heavier than the air outside
 * @param dewPointC below this water condenses out of the gas, °C
 */
public record FlueTop(double tempC, double draughtPa, double dewPointC) {

    /**
     * Gas colder than this leaves tar in the flue, which can burn there: 250 °F, leaflet of the Alaska Department of
     * Environmental Conservation as restated in public, soft.
     */
    public static final double LEAST_C = 121;

    /** Whether tar is to be expected in the flue. */
    public boolean tars() {
        return tempC < LEAST_C;
    }

    /** Whether water condenses out of the gas itself; on the colder wall of the flue it begins sooner. */
    public boolean condenses() {
        return tempC < dewPointC;
    }
}
