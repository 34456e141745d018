package loftcoil.engine.constant;

/** Constants that more than one room needs; all of them exact by definition. */
public final class Constants {

    /** Standard acceleration of gravity, m/s²; 3rd CGPM 1901, ISO 80000-3. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    /** Kelvin at 0 °C; SI Brochure, 9th edition, 2.3.1. */
    public static final double KELVIN_AT_ZERO_C = 273.15;

    /** Standard atmosphere, Pa; 10th CGPM 1954. */
    public static final double STANDARD_ATMOSPHERE_PA = 101_325;

    /** Molar gas constant, J/(mol K); exact in the SI of 2019, CODATA 2018. */
    public static final double GAS_CONSTANT_J_PER_MOL_K = 8.31446261815324;

    /** Stefan–Boltzmann constant, W/(m² K⁴); exact in the SI of 2019, CODATA 2018, to the digits given. */
    public static final double STEFAN_BOLTZMANN_W_PER_M2_K4 = 5.670374419e-8;

    private Constants() {}
}
