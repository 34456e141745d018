package loftcoil.engine.heat;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Saturation;
import loftcoil.engine.water.Water;

/**
 * The heat flow at which steam cuts a heated surface off from boiling water, so that the metal burns out: Zuber (dissertation,
 * University of California 1959), {@code 0.131 h ρv^½ (σ g (ρl − ρv))^¼}, as printed in Incropera, 6th ed., equation 10.6 with
 * the constant of a large plate, 0.149; Zuber's own, 0.131, is taken here because it is lower.
 *
 * <p>For still, boiling water. Water that flows or is below boiling takes more before it burns out, so the value is a floor, as long
 * as there is water: a tube that has run dry burns out at any heat.
 */
public final class PoolBurnout {

    private static final double ZUBER = 0.131;
    private static final double VAPOUR_GAS_CONSTANT = 461.5;

    private PoolBurnout() {}

    /**
     * Heat flow at burnout.
     *
     * @param pressurePa absolute pressure in the water, Pa; 40 000 to 140 000, where the vapour is nearly an ideal gas
     * @return W/m²; within 20 %, the scatter of the tests behind the law
     * @throws RefusedException where no water boils at that pressure
     */
    public static double wPerM2(double pressurePa) {
        double boilingC = Saturation.tempC(pressurePa);
        double boilingK = boilingC + Constants.KELVIN_AT_ZERO_C;
        double liquid = Water.densityKgPerM3(Math.min(boilingC, Water.TEMPERATURE.high()));
        double vapour = pressurePa / (VAPOUR_GAS_CONSTANT * boilingK) / compressibility(boilingC);
        double buoyant = surfaceTensionNPerM(boilingK) * Constants.GRAVITY_M_PER_S2 * (liquid - vapour);
        return ZUBER * Saturation.evaporationJPerKg(boilingC) * Math.sqrt(vapour) * Math.pow(buoyant, 0.25);
    }

    /**
     * Surface tension of water against its vapour: IAPWS R1-76(2014).
     *
     * @param tempK temperature, K; 273 to 647
     * @return N/m
     */
    static double surfaceTensionNPerM(double tempK) {
        double apart = 1 - tempK / 647.096;
        return 0.2358 * Math.pow(apart, 1.256) * (1 - 0.625 * apart);
    }

    /** How much denser the vapour is than an ideal gas: 1.5 % at 100 °C (0.5977 kg/m³, from memory), nothing at 0 °C. */
    private static double compressibility(double tempC) {
        return 1 - 0.015 * tempC / 100;
    }
}
