package loftcoil.engine.start;

/**
 * A start at a moment.
 *
 * @param minute minutes since the fire was lit
 * @param flowKgPerS flow of the loop, kg/s, forward positive
 * @param coilInC at the coil's inlet, °C
 * @param coilOutC at the coil's outlet, °C
 */
public record StartMoment(double minute, double flowKgPerS, double coilInC, double coilOutC) {

    /** The hotter end of the coil, °C. */
    double hotterEndC() {
        return Math.max(coilInC, coilOutC);
    }

    /** Flow, taking a litre as a kilogram, L/min. */
    public double flowLPerMin() {
        return flowKgPerS * 60;
    }
}
