package loftcoil.engine.fire;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.gas.FlueGas;
import loftcoil.engine.gas.GasTransport;
import loftcoil.engine.heat.ChurchillBernstein;
import loftcoil.engine.heat.GasRadiation;

/**
 * What a coil with a surface of even temperature takes from the gas that sweeps over it: {@code m (h(gas) − h(surface)) (1 −
 * exp(−NTU))}, NTU from convection across a tube (Churchill and Bernstein, properties at the mean of gas and surface) and the
 * glow of gas and flame, both at the logarithmic mean of the gas temperature. Half the surface being grey is counted by (1 + ε)/2, Hottel's rule for
 * sooty walls. Never more than the gas holds above the surface.
 */
final class GasSide {

    private static final double SOOTY = 0.9;
    private static final double KELVIN_AT_ZERO_C = Constants.KELVIN_AT_ZERO_C;
    private static final int MOST_ROUNDS = 60;

    private final FireCoil coil;
    private final Burn burn;
    private final FlueGas gas;
    private final double flueKgPerS;
    private final double pressurePa;
    private final FireboxSize size;
    private final GasRadiation glow;
    private final double beforeC;
    private final double enthalpyBefore;
    /** Mean over first difference of gas and surface where the last search ended: the next begins there. */
    private double meanPart = 0.7;

    GasSide(CoilInFire fire) {
        this.coil = fire.coil();
        this.burn = fire.burn();
        this.gas = burn.flueGas();
        this.flueKgPerS = burn.flueKgPerS();
        this.pressurePa = fire.firebox().air().pressurePa();
        this.size = fire.firebox().size();
        double atmospheres = pressurePa / Constants.STANDARD_ATMOSPHERE_PA;
        this.glow =
                new GasRadiation(gas.carbonDioxide() * atmospheres, gas.waterVapour() * atmospheres, size.meanBeamM());
        this.beforeC = fire.gasBeforeC();
        this.enthalpyBefore = gas.enthalpyJPerKg(beforeC);
    }

    /** Heat taken by a surface at this temperature, no hotter than the gas, W. */
    double takenW(double surfaceC) {
        if (surfaceC >= beforeC) {
            return 0;
        }
        double held = enthalpyBefore - gas.enthalpyJPerKg(surfaceC);
        double heatPerK = flueKgPerS * held / (beforeC - surfaceC);
        double area = coil.surfaceM2() * coil.place().gasShare();
        double taken = 0;
        // The film changes little with the mean gas temperature: repeating it settles quickly.
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double meanC = surfaceC + (beforeC - surfaceC) * meanPart;
            double ntu = filmWPerM2K(meanC, surfaceC) * area / heatPerK;
            double cooled = -Math.expm1(-ntu);
            double next = flueKgPerS * held * cooled;
            meanPart = ntu < 1e-9 ? 1 : cooled / ntu;
            boolean settled = Math.abs(next - taken) <= 1e-10 * flueKgPerS * held;
            taken = next;
            if (settled) {
                break;
            }
        }
        return taken;
    }

    /** Convection and glow together, W/(m² K). */
    double filmWPerM2K(double gasC, double surfaceC) {
        return convectionWPerM2K(gasC, surfaceC) + glowWPerM2K(gasC, surfaceC);
    }

    double convectionWPerM2K(double gasC, double surfaceC) {
        double filmC = (gasC + surfaceC) / 2;
        GasTransport film = gas.transport(filmC);
        double massFlux = flueKgPerS / size.passageM2();
        // Velocity is that of the hot gas, density that of the film: both enter the Reynolds number.
        double velocity = massFlux / gas.densityKgPerM3(gasC, pressurePa);
        double reynolds = velocity * gas.densityKgPerM3(filmC, pressurePa) * coil.sootyM() / film.viscosityPaS();
        double prandtl = gas.specificHeatJPerKgK(filmC) * film.viscosityPaS() / film.conductivityWPerMK();
        // A gas that barely moves still conducts: the least the correlation is made for.
        double nusselt = ChurchillBernstein.nusselt(Math.max(reynolds, 0.21 / prandtl), prandtl);
        return nusselt * film.conductivityWPerMK() / coil.sootyM();
    }

    double glowWPerM2K(double gasC, double surfaceC) {
        double clear = 1 - glow.emissivity(gasC);
        double flame = coil.place().inFlame() ? size.flameEmissivity() : 0;
        double emissivity = 1 - clear * (1 - flame);
        double hot = gasC + KELVIN_AT_ZERO_C;
        double cold = surfaceC + KELVIN_AT_ZERO_C;
        double black = Constants.STEFAN_BOLTZMANN_W_PER_M2_K4 * (hot * hot + cold * cold) * (hot + cold);
        return (1 + SOOTY) / 2 * emissivity * black;
    }
}
