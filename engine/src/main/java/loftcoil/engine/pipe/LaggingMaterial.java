package loftcoil.engine.pipe;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * What a lagging is made of. Conductivity is a straight line in the mean temperature of the layer, through the two points
 * of the source. Above 100 °C real conductivity climbs faster: at a mean of 150 °C the line reads up to a tenth low. Damp or
 * squeezed lagging is worse than this.
 *
 * @param name how it is named in a design
 * @param conductivityAtZeroWPerMK conductivity of the line at 0 °C, W/(m K)
 * @param slopeWPerMK2 growth of the conductivity for each kelvin, W/(m K²)
 * @param serviceLimitC highest temperature it may touch, °C; foam near a flue melts or burns
 * @param source where the numbers come from
 */
public record LaggingMaterial(
        String name, double conductivityAtZeroWPerMK, double slopeWPerMK2, double serviceLimitC, String source) {

    /** The mean temperatures accepted, in °C. */
    public static final Allowed MEAN = new Allowed(-40, 250, "°C");

    /**
     * Conductivity.
     *
     * @param meanC mean temperature of the layer in °C, -40 to 250; beyond the service limit it is only a number
     * @return W/(m K)
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double conductivityWPerMK(double meanC) {
        return conductivityAtZeroWPerMK + slopeWPerMK2 * MEAN.require("meanC", meanC);
    }
}
