package loftcoil.engine.gas;

/**
 * What a gas resists and conducts with.
 *
 * @param viscosityPaS dynamic viscosity, Pa s
 * @param conductivityWPerMK thermal conductivity, W/(m K)
 */
public record GasTransport(double viscosityPaS, double conductivityWPerMK) {}
