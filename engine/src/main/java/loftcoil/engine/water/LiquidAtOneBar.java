package loftcoil.engine.water;

/**
 * The closed-form equations of IAPWS SR6-08(2011) as printed, in kelvin and without a range check, so that they can be
 * compared with the release's own verification table, whose first row is at 260 K. {@link Water} is the door.
 *
 * <p>Whole-number powers are multiplications: a solve of one loop asks for thousands of densities.
 */
final class LiquidAtOneBar {

    /** Specific gas constant of water of the release, J/(kg K). */
    private static final double R = 461.51805;

    private static final double REFERENCE_PRESSURE_PA = 1e5;
    private static final double REFERENCE_K = 10;
    private static final double UPPER_K = 593;
    private static final double LOWER_K = 232;

    private LiquidAtOneBar() {}

    /** Equation 1 with the coefficients of table 1: specific volume in m³/kg. */
    static double volumeM3PerKg(double kelvin) {
        double a = REFERENCE_K / (UPPER_K - kelvin);
        double b = REFERENCE_K / (kelvin - LOWER_K);
        double a2 = a * a;
        double a4 = a2 * a2;
        double a8 = a4 * a4;
        double b2 = b * b;
        double b3 = b2 * b;
        double upper = 6.74458446e3 * a4
                - 2.22521604e5 * a4 * a
                + 1.00231247e8 * a4 * a2 * a
                - 1.63552118e9 * a8
                + 8.32299658e9 * a8 * a;
        double lower = 5.78545292e-3 * b
                - 1.53195665e-2 * b2
                + 3.11337859e-2 * b3
                - 4.23546241e-2 * b2 * b2
                + 3.38713507e-2 * b3 * b2
                - 1.19946761e-2 * b3 * b3;
        return R * REFERENCE_K / REFERENCE_PRESSURE_PA * (1.93763157e-2 + upper + lower);
    }

    /** Equation 2 at 0.1 MPa: slope of the specific volume with temperature, m³/(kg K). */
    static double volumeSlopeM3PerKgK(double kelvin) {
        double a = REFERENCE_K / (UPPER_K - kelvin);
        double b = REFERENCE_K / (kelvin - LOWER_K);
        double a2 = a * a;
        double a5 = a2 * a2 * a;
        double b2 = b * b;
        double b4 = b2 * b2;
        double upper = 4 * 6.74458446e3 * a5
                - 5 * 2.22521604e5 * a5 * a
                + 7 * 1.00231247e8 * a5 * a2 * a
                - 8 * 1.63552118e9 * a5 * a2 * a2
                + 9 * 8.32299658e9 * a5 * a5;
        double lower = 5.78545292e-3 * b2
                - 2 * 1.53195665e-2 * b2 * b
                + 3 * 3.11337859e-2 * b4
                - 4 * 4.23546241e-2 * b4 * b
                + 5 * 3.38713507e-2 * b4 * b2
                - 6 * 1.19946761e-2 * b4 * b2 * b;
        return R / REFERENCE_PRESSURE_PA * (upper - lower);
    }

    /** Heat capacity at 0.1 MPa of table 3, J/(kg K), with the coefficients 1 to 4 of table 1 and c3. */
    static double specificHeatJPerKgK(double kelvin) {
        double tau = kelvin / REFERENCE_K;
        double a = REFERENCE_K / (UPPER_K - kelvin);
        double b = REFERENCE_K / (kelvin - LOWER_K);
        double a3 = a * a * a;
        double a6 = a3 * a3;
        double b2 = b * b;
        double b4 = b2 * b2;
        double upper = -4 * 5 * 1.661470539e5 * a6 + 5 * 6 * 2.708781640e6 * a6 * a - 7 * 8 * 1.557191544e8 * a6 * a3;
        double lower = -2 * 3 * 8.237426256e-1 * b4
                + 3 * 4 * 1.908956353 * b4 * b
                - 4 * 5 * 2.017597384 * b4 * b2
                + 5 * 6 * 8.546361348e-1 * b4 * b2 * b;
        return -R * (-8.983025854 + tau * (upper + lower));
    }

    /** Equation 7: viscosity in Pa s. */
    static double viscosityPaS(double kelvin) {
        double log = Math.log(kelvin / 300);
        return 1e-6
                * (280.68 * Math.exp(-1.9 * log)
                        + 511.45 * Math.exp(-7.7 * log)
                        + 61.131 * Math.exp(-19.6 * log)
                        + 0.45903 * Math.exp(-40 * log));
    }

    /** Equation 8: thermal conductivity in W/(m K). */
    static double conductivityWPerMK(double kelvin) {
        double log = Math.log(kelvin / 300);
        return 1.6630 * Math.exp(-1.15 * log)
                - 1.7781 * Math.exp(-3.4 * log)
                + 1.1567 * Math.exp(-6 * log)
                - 0.432115 * Math.exp(-7.6 * log);
    }
}
