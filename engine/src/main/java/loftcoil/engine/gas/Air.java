package loftcoil.engine.gas;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Dry air as an ideal gas.
 *
 * <p>Viscosity and conductivity are the equations of ISO 2533:1975; against handbook tables they stay within 1 % up to 450
 * K and within 3 % up to 1300 K. Heat capacity is the ideal-gas equation of Lemmon, Jacobsen, Penoncello and Friend, J.
 * Phys. Chem. Ref. Data 29 (2000) 331, within 0.2 % of tables. Moisture is left out: at 30 °C and saturation it changes
 * the density by under 2 %.
 */
public final class Air {

    /** Specific gas constant of ISO 2533, J/(kg K). */
    public static final double GAS_CONSTANT_J_PER_KG_K = 287.05287;

    /** The temperatures every method accepts, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(-60, 1000, "°C");

    /** The absolute pressures accepted, in Pa. */
    public static final Allowed PRESSURE = new Allowed(40_000, 120_000, "Pa");

    private Air() {}

    /**
     * Density, by the ideal gas law.
     *
     * @param tempC temperature in °C, -60 to 1000
     * @param pressurePa absolute pressure in Pa, 40 000 to 120 000
     * @return kg/m³
     * @throws RefusedException where either is outside its range or not a number
     */
    public static double densityKgPerM3(double tempC, double pressurePa) {
        return PRESSURE.require("pressurePa", pressurePa) / (GAS_CONSTANT_J_PER_KG_K * kelvin(tempC));
    }

    /**
     * Dynamic viscosity, by Sutherland's equation with the constants of ISO 2533.
     *
     * @param tempC temperature in °C, -60 to 1000
     * @return Pa s
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double viscosityPaS(double tempC) {
        double kelvin = kelvin(tempC);
        return 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
    }

    /**
     * Thermal conductivity, by the equation of ISO 2533.
     *
     * @param tempC temperature in °C, -60 to 1000
     * @return W/(m K)
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double conductivityWPerMK(double tempC) {
        double kelvin = kelvin(tempC);
        return 2.648151e-3 * kelvin * Math.sqrt(kelvin) / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
    }

    /**
     * Heat capacity at constant pressure of the ideal gas, by the equation of Lemmon and others (2000); its last term,
     * which matters above 2000 K only, is left out.
     *
     * @param tempC temperature in °C, -60 to 1000
     * @return J/(kg K)
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double specificHeatJPerKgK(double tempC) {
        double kelvin = kelvin(tempC);
        double slow = 3.490888032
                + kelvin * (2.395525583e-6 + kelvin * (7.172111248e-9 + kelvin * -3.115413101e-13))
                + 0.223806688 / (kelvin * Math.sqrt(kelvin));
        double vibration = 0.791309509 * vibration(3364.011 / kelvin) + 0.212236768 * vibration(2242.45 / kelvin);
        return GAS_CONSTANT_J_PER_KG_K * (slow + vibration);
    }

    /**
     * Prandtl number: heat capacity times viscosity over conductivity.
     *
     * @param tempC temperature in °C, -60 to 1000
     * @return a plain number, about 0.71 at room temperature
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double prandtl(double tempC) {
        return specificHeatJPerKgK(tempC) * viscosityPaS(tempC) / conductivityWPerMK(tempC);
    }

    /** Heat taken up by a vibration, as a share of the gas constant (Einstein's function). */
    private static double vibration(double ratio) {
        double grown = Math.exp(ratio);
        return ratio * ratio * grown / ((grown - 1) * (grown - 1));
    }

    private static double kelvin(double tempC) {
        return TEMPERATURE.require("tempC", tempC) + Constants.KELVIN_AT_ZERO_C;
    }
}
