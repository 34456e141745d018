package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * What fills the space between two panes, at the 283 K of EN 673.
 *
 * @param densityKgPerM3 density, kg/m³
 * @param viscosityPaS dynamic viscosity, Pa s
 * @param conductivityWPerMK thermal conductivity, W/(m K)
 * @param specificHeatJPerKgK heat capacity at constant pressure, J/(kg K)
 */
public record GlazingGas(
        double densityKgPerM3, double viscosityPaS, double conductivityWPerMK, double specificHeatJPerKgK) {

    /** Air at 283 K: EN 673:2011, Table 1 (from memory). */
    public static final GlazingGas AIR = new GlazingGas(1.232, 1.761e-5, 0.02496, 1008);

    /** Argon at 283 K: EN 673:2011, Table 1 (from memory). */
    public static final GlazingGas ARGON = new GlazingGas(1.699, 2.164e-5, 0.01684, 519);

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public GlazingGas {
        new FaultList()
                .check("densityKgPerM3", densityKgPerM3, new Allowed(0.1, 10, "kg/m³"))
                .check("viscosityPaS", viscosityPaS, new Allowed(1e-6, 1e-4, "Pa s"))
                .check("conductivityWPerMK", conductivityWPerMK, new Allowed(1e-3, 1, "W/(m K)"))
                .check("specificHeatJPerKgK", specificHeatJPerKgK, new Allowed(100, 20_000, "J/(kg K)"))
                .refuseIfAny();
    }
}
