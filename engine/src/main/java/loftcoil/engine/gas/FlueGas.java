package loftcoil.engine.gas;

import java.util.List;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Saturation;
import loftcoil.engine.words.Numeral;

/**
 * Flue gas of a fire as a mixture of ideal gases; what is not carbon dioxide, water vapour or oxygen is the nitrogen of the
 * air with its argon (0.934 parts to 78.116). Soot, tar, carbon monoxide and dissociation are left out.
 *
 * <p>Viscosity is mixed by Wilke's rule, conductivity by that of Mason and Saxena (Bird, Stewart and Lightfoot, 2nd ed.,
 * equations 1.4-15 and 9.3-17, from memory). Heat is good to 0.5 %, viscosity and conductivity to 5 %.
 *
 * @param carbonDioxide share of the molecules (of the volume), 0 to 1
 * @param waterVapour share of the molecules, 0 to 1
 * @param oxygen share of the molecules, 0 to 1; the three together at most 1
 */
public record FlueGas(double carbonDioxide, double waterVapour, double oxygen) {

    /** The temperatures every method accepts, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(-40, 2500, "°C");

    private static final Allowed SHARE = new Allowed(0, 1, "");
    private static final double ARGON_OF_INERT = 0.934 / 79.05;
    private static final List<Species> GASES =
            List.of(Species.CARBON_DIOXIDE, Species.WATER, Species.OXYGEN, Species.NITROGEN, Species.ARGON);

    /**
     * Checks the shares.
     *
     * @throws RefusedException where a share is outside its range or not a number, or they exceed 1 together
     */
    public FlueGas {
        SHARE.require("carbonDioxide", carbonDioxide);
        SHARE.require("waterVapour", waterVapour);
        SHARE.require("oxygen", oxygen);
        double sum = carbonDioxide + waterVapour + oxygen;
        if (sum > 1 + 1e-12) {
            throw new RefusedException(List.of(new Fault(
                    "carbonDioxide + waterVapour + oxygen", Numeral.typed(sum), "at most 1", "shares of one gas")));
        }
    }

    /** Dry air: 20.95 % oxygen by volume, ISO 2533:1975. */
    public static FlueGas dryAir() {
        return new FlueGas(0, 0, 0.2095);
    }

    /** Molar mass, kg/mol. */
    public double kgPerMol() {
        return sum(gas -> gas.kgPerMol());
    }

    /** Oxygen as a gas analyser reads it: percent of the volume of the dried gas. */
    public double dryOxygenPct() {
        return 100 * oxygen / (1 - waterVapour);
    }

    /** Carbon dioxide as a gas analyser reads it: percent of the volume of the dried gas. */
    public double dryCarbonDioxidePct() {
        return 100 * carbonDioxide / (1 - waterVapour);
    }

    /**
     * Density, by the ideal gas law.
     *
     * @param tempC temperature in °C, -40 to 2500
     * @param pressurePa absolute pressure in Pa, 40 000 to 120 000
     * @return kg/m³
     * @throws RefusedException where either is outside its range or not a number
     */
    public double densityKgPerM3(double tempC, double pressurePa) {
        double pressure = Air.PRESSURE.require("pressurePa", pressurePa);
        return pressure * kgPerMol() / (Constants.GAS_CONSTANT_J_PER_MOL_K * kelvin(tempC));
    }

    /**
     * Heat capacity at constant pressure.
     *
     * @param tempC temperature in °C, -40 to 2500
     * @return J/(kg K)
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double specificHeatJPerKgK(double tempC) {
        double kelvin = kelvin(tempC);
        return sum(gas -> gas.heatJPerMolK(kelvin)) / kgPerMol();
    }

    /**
     * Heat in the gas above 25 °C, its water as vapour.
     *
     * @param tempC temperature in °C, -40 to 2500
     * @return J/kg, negative below 25 °C
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double enthalpyJPerKg(double tempC) {
        double kelvin = kelvin(tempC);
        return sum(gas -> gas.enthalpyJPerMol(kelvin)) / kgPerMol();
    }

    /**
     * The temperature at which the gas holds this heat: the inverse of {@link #enthalpyJPerKg}.
     *
     * @param enthalpyJPerKg heat above 25 °C in J/kg; that of -40 to 2500 °C
     * @return °C
     * @throws RefusedException where the heat is outside its range or not a number
     */
    public double tempC(double enthalpyJPerKg) {
        double least = enthalpyJPerKg(TEMPERATURE.low());
        double most = enthalpyJPerKg(TEMPERATURE.high());
        double wanted = new Allowed(least, most, "J/kg").require("enthalpyJPerKg", enthalpyJPerKg);
        double tempC = 25 + wanted / 1150;
        // Heat capacity is positive and changes slowly, so that Newton's steps cannot run away.
        for (int i = 0; i < 50; i++) {
            double at = Math.min(Math.max(tempC, TEMPERATURE.low()), TEMPERATURE.high());
            double step = (wanted - enthalpyJPerKg(at)) / specificHeatJPerKgK(at);
            tempC = at + step;
            if (Math.abs(step) < 1e-11 * (1 + Math.abs(tempC))) {
                break;
            }
        }
        return Math.min(Math.max(tempC, TEMPERATURE.low()), TEMPERATURE.high());
    }

    /**
     * Dynamic viscosity and thermal conductivity, which are best worked out together.
     *
     * @param tempC temperature in °C, -40 to 2500
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public GasTransport transport(double tempC) {
        double kelvin = kelvin(tempC);
        double[] shares = shares();
        double[] viscosities = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            viscosities[i] = GASES.get(i).viscosityPaS(kelvin);
        }
        double viscosity = 0;
        double conductivity = 0;
        for (int i = 0; i < shares.length; i++) {
            double crowd = 0;
            for (int j = 0; j < shares.length; j++) {
                double mass = GASES.get(i).kgPerMol() / GASES.get(j).kgPerMol();
                double root = 1 + Math.sqrt(viscosities[i] / viscosities[j] / Math.sqrt(mass));
                crowd += shares[j] * root * root / Math.sqrt(8 * (1 + mass));
            }
            viscosity += shares[i] * viscosities[i] / crowd;
            conductivity += shares[i] * viscosities[i] * GASES.get(i).conductivityOverViscosity(kelvin) / crowd;
        }
        return new GasTransport(viscosity, conductivity);
    }

    /**
     * Prandtl number: heat capacity times viscosity over conductivity.
     *
     * @param tempC temperature in °C, -40 to 2500
     * @return a plain number, about 0.7
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double prandtl(double tempC) {
        GasTransport transport = transport(tempC);
        return specificHeatJPerKgK(tempC) * transport.viscosityPaS() / transport.conductivityWPerMK();
    }

    /**
     * Temperature below which water condenses out of the gas: where pure water boils at its partial pressure (IAPWS-IF97,
     * region 4). Acids and tar, which condense hotter, are left out.
     *
     * @param pressurePa absolute pressure in Pa, 40 000 to 120 000
     * @return °C; 0 where there is too little vapour to condense as water
     * @throws RefusedException where the pressure is outside its range or not a number
     */
    public double dewPointC(double pressurePa) {
        double vapourPa = waterVapour * Air.PRESSURE.require("pressurePa", pressurePa);
        return vapourPa < Saturation.PRESSURE.low() ? 0 : Saturation.tempC(vapourPa);
    }

    /** Shares in the order of {@link #GASES}. */
    private double[] shares() {
        double inert = Math.max(0, 1 - carbonDioxide - waterVapour - oxygen);
        return new double[] {carbonDioxide, waterVapour, oxygen, inert * (1 - ARGON_OF_INERT), inert * ARGON_OF_INERT};
    }

    private double sum(ToDoubleFunction<Species> property) {
        double[] shares = shares();
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * property.applyAsDouble(GASES.get(i));
        }
        return sum;
    }

    private static double kelvin(double tempC) {
        return TEMPERATURE.require("tempC", tempC) + Constants.KELVIN_AT_ZERO_C;
    }
}
