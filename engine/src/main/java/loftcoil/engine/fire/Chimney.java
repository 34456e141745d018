package loftcoil.engine.fire;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.gas.Air;
import loftcoil.engine.gas.FlueGas;

/**
 * A round flue of even section from the heater to the top.
 *
 * @param heightM height of its mouth above the heater's outlet in m, 0 to 30
 * @param diameterM inner diameter in m, 0.05 to 0.6
 * @param lossWPerM2K heat lost for each m² of inner surface and kelvin to the outside, in W/(m² K), 0 to 30: about 4 single wall
 *     in still air, 1.3 insulated (films of 6 inside and 10 outside, 30 mm of wool; common practice, no source)
 * @param outsideC temperature of the air around it in °C, -40 to 50
 */
public record Chimney(double heightM, double diameterM, double lossWPerM2K, double outsideC) {

    private static final Allowed HEIGHT = new Allowed(0, 30, "m");
    private static final Allowed DIAMETER = new Allowed(0.05, 0.6, "m");
    private static final Allowed LOSS = new Allowed(0, 30, "W/(m² K)");
    private static final Allowed OUTSIDE = new Allowed(-40, 50, "°C");

    /**
     * Checks the values.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public Chimney {
        HEIGHT.require("heightM", heightM);
        DIAMETER.require("diameterM", diameterM);
        LOSS.require("lossWPerM2K", lossWPerM2K);
        OUTSIDE.require("outsideC", outsideC);
    }

    /**
     * What the gas does on its way up: it cools by {@code exp(−U π d H / (m cp))} towards the air outside, and pulls by the
     * difference of weight {@code g H (ρ outside − ρ gas)} at its mean temperature, before friction (textbook forms; EN 13384-1
     * builds on the same).
     *
     * @param burn the fire
     * @param flueC temperature of the gas as it leaves the heater in °C, -40 to 1500
     * @param pressurePa absolute pressure of the air in Pa, 40 000 to 120 000
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public FlueTop top(Burn burn, double flueC, double pressurePa) {
        double bottomC = new Allowed(-40, 1500, "°C").require("flueC", flueC);
        FlueGas gas = burn.flueGas();
        double cools = lossWPerM2K * Math.PI * diameterM * heightM;
        double units = cools / (burn.flueKgPerS() * gas.specificHeatJPerKgK(bottomC));
        double topC = outsideC + (bottomC - outsideC) * Math.exp(-units);
        double part = units < 1e-9 ? 1 : -Math.expm1(-units) / units;
        double meanC = outsideC + (bottomC - outsideC) * part;
        double lighter = Air.densityKgPerM3(outsideC, pressurePa) - gas.densityKgPerM3(meanC, pressurePa);
        return new FlueTop(topC, Constants.GRAVITY_M_PER_S2 * heightM * lighter, gas.dewPointC(pressurePa));
    }
}
