package loftcoil.engine.sun;

/**
 * What falls on a tilted window at one moment, by where it comes from.
 *
 * @param beamWPerM2 straight from the sun and from the bright sky close about it, in W/m²
 * @param skyWPerM2 from the rest of the sky, in W/m²
 * @param groundWPerM2 thrown back by the ground, in W/m²
 */
public record TiltedLight(double beamWPerM2, double skyWPerM2, double groundWPerM2) {

    /** No light at all. */
    public static final TiltedLight DARK = new TiltedLight(0, 0, 0);

    /** All three together in W/m². */
    public double totalWPerM2() {
        return beamWPerM2 + skyWPerM2 + groundWPerM2;
    }
}
