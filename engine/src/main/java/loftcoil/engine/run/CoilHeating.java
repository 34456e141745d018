package loftcoil.engine.run;

/** The heat that the water in the coil takes up while the fire burns, as far as it depends on the water. */
@FunctionalInterface
public interface CoilHeating {

    /**
     * Heat taken up.
     *
     * @param flowKgPerS mass flow through the coil, kg/s, more than 0
     * @param inletC temperature of the water at the coil's inlet, °C
     * @return W, 0 or more
     */
    double heatW(double flowKgPerS, double inletC);

    /** The same heat whatever the water does: a coil whose heat was stated or measured. */
    static CoilHeating stated(double heatW) {
        return (flow, inletC) -> heatW;
    }
}
