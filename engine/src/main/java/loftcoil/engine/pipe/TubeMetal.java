package loftcoil.engine.pipe;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a tube is made of, with the properties that a loop feels, near 60 °C.
 *
 * <p>Densities, specific heats and conductivities: copper as in the tables of EN 1057 (8900 kg/m³), Incropera, 6th ed., table A.1
 * (385 J/(kg K); pure 401 W/(m K)) and phosphorus-deoxidised 305 to 365 W/(m K), from memory; stainless AISI 316 by a tube maker's
 * table (8027 kg/m³, 14.6 W/(m K) from 20 to 100 °C), between the 13.4 at 300 K and 15.2 at 400 K of Incropera, whose specific heat
 * it has (468); steel, plain carbon, Incropera (7854 kg/m³, 434 J/(kg K), 60.5 W/(m K)). Growth: tube makers' tables, steel from
 * memory. Roughness of new tube: drawn copper 1.5 µm and commercial steel 45 µm (Moody 1944), stainless 2 µm (a table of
 * roughness, the same in Çengel and Cimbala, from memory); rust makes steel ten times as rough. Emissivities in use: from memory.
 */
public enum TubeMetal {
    /** Phosphorus-deoxidised copper; what a tube is taken to be, hard, where its name does not say. */
    COPPER("copper", "copper", 8900, 385, 340, 17e-6, Friction.DRAWN_TUBE_ROUGHNESS_M, OuterFilm.DULL_COPPER),
    /** Austenitic stainless steel, AISI 316. */
    STAINLESS("stainless", "stainless steel", 8027, 468, 14.6, 16.5e-6, 2e-6, 0.3),
    /** Plain carbon steel; rusts in fresh water, sooner beside copper. */
    STEEL("steel", "plain steel", 7854, 434, 60.5, 12e-6, 45e-6, 0.8);

    private final String code;
    private final String words;
    private final double kgPerM3;
    private final double jPerKgK;
    private final double conductivityWPerMK;
    private final double growthPerK;
    private final double roughnessM;
    private final double emissivity;

    TubeMetal(
            String code,
            String words,
            double kgPerM3,
            double jPerKgK,
            double conductivityWPerMK,
            double growthPerK,
            double roughnessM,
            double emissivity) {
        this.code = code;
        this.words = words;
        this.kgPerM3 = kgPerM3;
        this.jPerKgK = jPerKgK;
        this.conductivityWPerMK = conductivityWPerMK;
        this.growthPerK = growthPerK;
        this.roughnessM = roughnessM;
        this.emissivity = emissivity;
    }

    /** The metal of a word behind a size, such as {@code stainless}. */
    static Optional<TubeMetal> find(String code) {
        return Stream.of(values()).filter(metal -> metal.code.equals(code)).findFirst();
    }

    /** The word for it behind a size. */
    public String code() {
        return code;
    }

    /** What it is called in a sentence. */
    public String words() {
        return words;
    }

    /** Density, kg/m³. */
    public double kgPerM3() {
        return kgPerM3;
    }

    /** Specific heat, J/(kg K). */
    public double jPerKgK() {
        return jPerKgK;
    }

    /** Thermal conductivity, W/(m K). */
    public double conductivityWPerMK() {
        return conductivityWPerMK;
    }

    /** Growth in length of a metre for each kelvin, m/(m K). */
    public double growthPerK() {
        return growthPerK;
    }

    /** Height of the roughness inside a new tube, m. */
    public double roughnessM() {
        return roughnessM;
    }

    /** Emissivity of a bare tube in use. */
    double emissivity() {
        return emissivity;
    }
}
