package loftcoil.engine.water;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * The line on which water boils: region 4 of IAPWS R7-97(2012), the Industrial Formulation 1997, equations 29 to 31.
 *
 * <p>Valid from 273.15 K to the critical point at 647.096 K. The release states an uncertainty of 0.025 % of the pressure,
 * about 0.007 K at 100 °C.
 */
public final class Saturation {

    /** The temperatures {@link #pressurePa} accepts, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(0, 373.946, "°C");

    /** The absolute pressures {@link #tempC} accepts, in Pa: from the boiling pressure at 0 °C to the critical point. */
    public static final Allowed PRESSURE = new Allowed(611.213, 22.064e6, "Pa");

    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    private Saturation() {}

    /**
     * Temperature at which water boils under a pressure, equation 31.
     *
     * @param pressurePa absolute pressure in Pa, 611.213 to 22.064 million; gauge pressure needs that of the air added
     * @return °C
     * @throws RefusedException where the pressure is outside its range or not a number
     */
    public static double tempC(double pressurePa) {
        double beta = Math.sqrt(Math.sqrt(PRESSURE.require("pressurePa", pressurePa) * 1e-6));
        double beta2 = beta * beta;
        double e = beta2 + N3 * beta + N6;
        double f = N1 * beta2 + N4 * beta + N7;
        double g = N2 * beta2 + N5 * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2 - Constants.KELVIN_AT_ZERO_C;
    }

    /**
     * Absolute pressure under which water boils at a temperature, equation 30.
     *
     * @param tempC temperature in °C, 0 to 373.946
     * @return Pa, absolute
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public static double pressurePa(double tempC) {
        double kelvin = TEMPERATURE.require("tempC", tempC) + Constants.KELVIN_AT_ZERO_C;
        double theta = kelvin + N9 / (kelvin - N10);
        double theta2 = theta * theta;
        double a = theta2 + N1 * theta + N2;
        double b = N3 * theta2 + N4 * theta + N5;
        double c = N6 * theta2 + N7 * theta + N8;
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        double square = root * root;
        return square * square * 1e6;
    }

    /**
     * Heat that makes steam of water at its boiling point: a straight line through 2382.7 kJ/kg at 50 °C and 2257.0 at 100 °C
     * (Incropera, table A.6, from memory).
     *
     * @param boilingC boiling point, °C; 50 to 110, where it is within 0.1 % of IAPWS-IF97
     * @return J/kg
     */
    public static double evaporationJPerKg(double boilingC) {
        return 2.257e6 - (boilingC - 100) * 2514;
    }
}
