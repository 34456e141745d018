package loftcoil.engine.water;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Liquid water at 0.1 MPa, after IAPWS SR6-08(2011), "Revised Supplementary Release on Properties of Liquid Water at 0.1
 * MPa".
 *
 * <p>The equations hold from -20 to 110 °C; this class refuses what is below 0 °C, where standing water freezes. Above 99.6
 * °C the liquid is metastable at 0.1 MPa and real only under the head of a loop. The release states uncertainties of
 * 0.0001 % for density (rising to 0.005 % above 40 °C), 0.1 % for heat capacity, 1 % for viscosity and 1.5 % for
 * conductivity. Up to 0.3 MPa, more than any gravity loop reaches, pressure changes the density by less than 0.01 %.
 */
public final class Water {

    /** The temperatures every method accepts, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(0, 110, "°C");

    private Water() {}

    /**
     * Density.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return kg/m³, SR6-08 equation 1 inverted
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double densityKgPerM3(double tempC) {
        return 1 / LiquidAtOneBar.volumeM3PerKg(kelvin(tempC));
    }

    /**
     * Relative growth of volume for each kelvin, at constant pressure. Negative below 4 °C.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return 1/K, SR6-08 equation 2 over equation 1
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double expansionPerK(double tempC) {
        double kelvin = kelvin(tempC);
        return LiquidAtOneBar.volumeSlopeM3PerKgK(kelvin) / LiquidAtOneBar.volumeM3PerKg(kelvin);
    }

    /**
     * Heat capacity at constant pressure.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return J/(kg K), SR6-08 table 3
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double specificHeatJPerKgK(double tempC) {
        return LiquidAtOneBar.specificHeatJPerKgK(kelvin(tempC));
    }

    /**
     * Dynamic viscosity.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return Pa s, SR6-08 equation 7
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double viscosityPaS(double tempC) {
        return LiquidAtOneBar.viscosityPaS(kelvin(tempC));
    }

    /**
     * Thermal conductivity.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return W/(m K), SR6-08 equation 8
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double conductivityWPerMK(double tempC) {
        return LiquidAtOneBar.conductivityWPerMK(kelvin(tempC));
    }

    /**
     * Prandtl number: heat capacity times viscosity over conductivity.
     *
     * @param tempC temperature in °C, 0 to 110
     * @return a plain number, about 13.6 at 0 °C and 1.75 at 100 °C
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double prandtl(double tempC) {
        double kelvin = kelvin(tempC);
        return LiquidAtOneBar.specificHeatJPerKgK(kelvin)
                * LiquidAtOneBar.viscosityPaS(kelvin)
                / LiquidAtOneBar.conductivityWPerMK(kelvin);
    }

    private static double kelvin(double tempC) {
        return TEMPERATURE.require("tempC", tempC) + Constants.KELVIN_AT_ZERO_C;
    }
}
