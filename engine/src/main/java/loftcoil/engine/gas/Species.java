package loftcoil.engine.gas;

import loftcoil.engine.constant.Constants;

/**
 * One of the gases that make up flue gas, as an ideal gas.
 *
 * <p>Heat capacity: polynomials of NASA form with the coefficients of GRI-Mech 3.0 (1999), 200 to 3500 K; the JANAF tables
 * are met within 0.4 %. Viscosity: Chapman and Enskog's theory with the collision integral of Neufeld, Janzen and Aziz
 * (1972) and the molecule sizes of Reid, Prausnitz and Poling, The Properties of Gases and Liquids, 4th ed., appendix B.
 * Conductivity: the relations of Eucken in the same book, chapter 10.
 */
record Species(Molecule molecule, Heat cool, Heat hot) {

    static final Species CARBON_DIOXIDE = new Species(
            new Molecule(0.0440095, 3.941, 195.2, false),
            new Heat(2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13),
            new Heat(3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14));

    static final Species WATER = new Species(
            new Molecule(0.01801528, 2.641, 809.1, true),
            new Heat(4.19864056, -2.03643410e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12),
            new Heat(3.03399249, 2.17691804e-3, -1.64072518e-7, -9.70419870e-11, 1.68200992e-14));

    static final Species OXYGEN = new Species(
            new Molecule(0.0319988, 3.467, 106.7, false),
            new Heat(3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12),
            new Heat(3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14));

    static final Species NITROGEN = new Species(
            new Molecule(0.0280134, 3.798, 71.4, false),
            new Heat(3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12),
            new Heat(2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15));

    static final Species ARGON = new Species(
            new Molecule(0.039948, 3.542, 93.3, false), new Heat(2.5, 0, 0, 0, 0), new Heat(2.5, 0, 0, 0, 0));

    /** Enthalpies are counted from here, as in the tables: 25 °C. */
    static final double REFERENCE_K = 298.15;

    private static final double JOIN_K = 1000;

    /** A molecule by its molar mass (kg/mol), its diameter (Å) and the depth of its well over Boltzmann's constant
     * (K), and whether it is polar. */
    record Molecule(double kgPerMol, double diameterA, double wellK, boolean polar) {}

    /** Heat capacity over the gas constant as a polynomial of the temperature in K. */
    record Heat(double a0, double a1, double a2, double a3, double a4) {

        double at(double t) {
            return a0 + t * (a1 + t * (a2 + t * (a3 + t * a4)));
        }

        double integral(double t) {
            return t * (a0 + t * (a1 / 2 + t * (a2 / 3 + t * (a3 / 4 + t * a4 / 5))));
        }
    }

    double kgPerMol() {
        return molecule.kgPerMol();
    }

    /** Heat capacity at constant pressure, J/(mol K). */
    double heatJPerMolK(double kelvin) {
        return Constants.GAS_CONSTANT_J_PER_MOL_K * (kelvin <= JOIN_K ? cool : hot).at(kelvin);
    }

    /** Heat above 25 °C, J/mol. */
    double enthalpyJPerMol(double kelvin) {
        double below = cool.integral(Math.min(kelvin, JOIN_K)) - cool.integral(REFERENCE_K);
        double above = kelvin > JOIN_K ? hot.integral(kelvin) - hot.integral(JOIN_K) : 0;
        return Constants.GAS_CONSTANT_J_PER_MOL_K * (below + above);
    }

    /** Dynamic viscosity, Pa s; Chapman and Enskog. */
    double viscosityPaS(double kelvin) {
        double t = kelvin / molecule.wellK();
        double collision =
                1.16145 * Math.pow(t, -0.14874) + 0.52487 * Math.exp(-0.77320 * t) + 2.16178 * Math.exp(-2.43787 * t);
        double gramPerMol = 1000 * molecule.kgPerMol();
        return 2.6696e-6 * Math.sqrt(gramPerMol * kelvin) / (molecule.diameterA() * molecule.diameterA() * collision);
    }

    /**
     * Thermal conductivity over viscosity, J/(kg K). The modified Eucken relation reads high for polar molecules, Eucken's own low for the
     * others: each is used where it is the better.
     */
    double conductivityOverViscosity(double kelvin) {
        double constantVolume = heatJPerMolK(kelvin) - Constants.GAS_CONSTANT_J_PER_MOL_K;
        double eucken = molecule.polar()
                ? constantVolume + 2.25 * Constants.GAS_CONSTANT_J_PER_MOL_K
                : 1.32 * constantVolume + 1.77 * Constants.GAS_CONSTANT_J_PER_MOL_K;
        return eucken / molecule.kgPerMol();
    }
}
