package loftcoil.engine.fire;

import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.FlueGas;
import loftcoil.engine.words.Numeral;

/**
 * A kind of wood as a fuel. Moisture is always counted on the whole mass, water included, as traders and EN ISO 18134 do;
 * a meter that counts on the dry wood reads more (25 where this counts 20).
 *
 * <p>Net heating value: what the wood gives when all water leaves as vapour; EN 14918 and ISO 17225-1 in the form NCV = NCV₀
 * (1 − M) − 2.443 M, in MJ/kg with M as a share. Air and flue gas by balance of carbon, hydrogen and oxygen, complete combustion,
 * dry air. Ash and nitrogen of the wood, about 1 %, do not take part.
 *
 * @param name how it is named in a design
 * @param carbon share of the dry mass, 0.3 to 0.7
 * @param hydrogen share of the dry mass, 0.03 to 0.1
 * @param oxygen share of the dry mass, 0.2 to 0.6; the three together at most 1
 * @param netJPerKgDry net heating value of dry wood in J/kg, 10 to 25 million
 */
public record Wood(String name, double carbon, double hydrogen, double oxygen, double netJPerKgDry) {

    /** The moistures accepted, in percent of the whole mass; fresh wood has 35 to 60. */
    public static final Allowed MOISTURE = new Allowed(0, 60, "%");

    /** The ratios of air to the least air needed that are accepted. */
    public static final Allowed EXCESS_AIR = new Allowed(1, 8, "");

    /** Heat that evaporates water at 25 °C and constant pressure, J/kg; EN 14918. */
    public static final double EVAPORATION_J_PER_KG = 2.443e6;

    private static final double CARBON_KG_PER_MOL = 0.012011;
    private static final double HYDROGEN_KG_PER_MOL = 0.00100794;
    private static final double OXYGEN_KG_PER_MOL = 0.0159994;
    private static final double WATER_KG_PER_MOL = 0.01801528;
    private static final double OXYGEN_OF_AIR = FlueGas.dryAir().oxygen();

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number, or the shares exceed 1
     */
    public Wood {
        new Allowed(0.3, 0.7, "").require("carbon", carbon);
        new Allowed(0.03, 0.1, "").require("hydrogen", hydrogen);
        new Allowed(0.2, 0.6, "").require("oxygen", oxygen);
        new Allowed(10e6, 25e6, "J/kg").require("netJPerKgDry", netJPerKgDry);
        if (carbon + hydrogen + oxygen > 1 + 1e-12) {
            throw new RefusedException(List.of(new Fault(
                    "carbon + hydrogen + oxygen",
                    Numeral.typed(carbon + hydrogen + oxygen),
                    "at most 1",
                    "shares of one mass")));
        }
    }

    /**
     * Net heating value of the wood as it is put on.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @return J for each kg of moist wood
     * @throws RefusedException where the moisture is outside its range or not a number
     */
    public double netJPerKg(double moisturePct) {
        double moisture = moisture(moisturePct);
        return netJPerKgDry * (1 - moisture) - EVAPORATION_J_PER_KG * moisture;
    }

    /**
     * Gross heating value: that of {@link #netJPerKg} with all the water, the wood's own and that of its hydrogen, condensed.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @return J for each kg of moist wood
     * @throws RefusedException where the moisture is outside its range or not a number
     */
    public double grossJPerKg(double moisturePct) {
        return netJPerKg(moisturePct) + EVAPORATION_J_PER_KG * vapourKgPerKg(moisturePct);
    }

    /**
     * Water vapour in the flue gas of a kilogram of wood: its moisture and what its hydrogen becomes.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @return kg for each kg of moist wood
     * @throws RefusedException where the moisture is outside its range or not a number
     */
    public double vapourKgPerKg(double moisturePct) {
        return vapourMol(moisture(moisturePct)) * WATER_KG_PER_MOL;
    }

    /**
     * The least dry air in which a kilogram of wood can burn completely.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @return kg for each kg of moist wood; about 6 for dry wood
     * @throws RefusedException where the moisture is outside its range or not a number
     */
    public double leastAirKgPerKg(double moisturePct) {
        return oxygenMol(moisture(moisturePct))
                / OXYGEN_OF_AIR
                * FlueGas.dryAir().kgPerMol();
    }

    /**
     * Flue gas of a kilogram of wood burnt completely.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @param excessAir air over the least air, 1 to 8
     * @return kg for each kg of moist wood
     * @throws RefusedException where a value is outside its range or not a number
     */
    public double flueKgPerKg(double moisturePct, double excessAir) {
        double air = EXCESS_AIR.require("excessAir", excessAir) * leastAirKgPerKg(moisturePct);
        double moisture = moisture(moisturePct);
        return (carbon + hydrogen + oxygen) * (1 - moisture) + moisture + air;
    }

    /**
     * What that flue gas is made of.
     *
     * @param moisturePct water in percent of the whole mass, 0 to 60
     * @param excessAir air over the least air, 1 to 8
     * @throws RefusedException where a value is outside its range or not a number
     */
    public FlueGas flueGas(double moisturePct, double excessAir) {
        double moisture = moisture(moisturePct);
        double ratio = EXCESS_AIR.require("excessAir", excessAir);
        double needed = oxygenMol(moisture);
        double carbonDioxide = carbonMol(moisture);
        double vapour = vapourMol(moisture);
        double left = (ratio - 1) * needed;
        double inert = ratio * needed * (1 - OXYGEN_OF_AIR) / OXYGEN_OF_AIR;
        double all = carbonDioxide + vapour + left + inert;
        return new FlueGas(carbonDioxide / all, vapour / all, left / all);
    }

    private double carbonMol(double moisture) {
        return (1 - moisture) * carbon / CARBON_KG_PER_MOL;
    }

    private double vapourMol(double moisture) {
        return (1 - moisture) * hydrogen / (2 * HYDROGEN_KG_PER_MOL) + moisture / WATER_KG_PER_MOL;
    }

    private double oxygenMol(double moisture) {
        double perDryKg =
                carbon / CARBON_KG_PER_MOL + hydrogen / (4 * HYDROGEN_KG_PER_MOL) - oxygen / (2 * OXYGEN_KG_PER_MOL);
        return (1 - moisture) * perDryKg;
    }

    private static double moisture(double moisturePct) {
        return MOISTURE.require("moisturePct", moisturePct) / 100;
    }
}
