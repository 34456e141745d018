package loftcoil.engine.heat;

import java.util.List;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * How strongly hot flue gas glows: total emissivity of carbon dioxide and water vapour among gases that do not radiate, at
 * about one atmosphere, as a weighted sum of three grey gases.
 *
 * <p>Smith, Shen and Friedman, J. Heat Transfer 104 (1982) 602, their tables for water to carbon dioxide of 1 and of 2; between
 * them a straight line, beyond them the nearer table. Fitted from 600 to 2400 K and 0.001 to 10 atm m: colder gas is taken
 * as at 600 K, hotter as at 2400 K. Against charts and other models within about 20 %. Soot in the flame comes on top.
 *
 * @param carbonDioxideAtm partial pressure of carbon dioxide in standard atmospheres, 0 to 1.2
 * @param waterVapourAtm partial pressure of water vapour in standard atmospheres, 0 to 1.2
 * @param meanBeamM mean beam length in m: 3.6 times volume over surface of the gas; 0 to 10
 */
public record GasRadiation(double carbonDioxideAtm, double waterVapourAtm, double meanBeamM) {

    /** The gas temperatures accepted, in °C. */
    public static final Allowed TEMPERATURE = new Allowed(-40, 2500, "°C");

    private static final Allowed PRESSURE = new Allowed(0, 1.2, "atm");
    private static final Allowed BEAM = new Allowed(0, 10, "m");

    private static final List<GreyGas> EVEN = List.of(
            new GreyGas(0.4303, 5.150e-1, -2.303e-4, 0.9779e-7, -1.494e-11),
            new GreyGas(7.055, 0.7749e-1, 3.399e-4, -2.297e-7, 3.770e-11),
            new GreyGas(178.1, 1.907e-1, -1.824e-4, 0.5608e-7, -0.5122e-11));
    private static final List<GreyGas> TWICE_THE_WATER = List.of(
            new GreyGas(0.4201, 6.508e-1, -5.551e-4, 3.029e-7, -5.353e-11),
            new GreyGas(6.516, -0.2504e-1, 6.112e-4, -3.882e-7, 6.528e-11),
            new GreyGas(131.9, 2.718e-1, -3.118e-4, 1.221e-7, -1.612e-11));

    /**
     * Checks the values.
     *
     * @throws RefusedException where a value is outside its range or not a number
     */
    public GasRadiation {
        PRESSURE.require("carbonDioxideAtm", carbonDioxideAtm);
        PRESSURE.require("waterVapourAtm", waterVapourAtm);
        BEAM.require("meanBeamM", meanBeamM);
    }

    /**
     * Total emissivity.
     *
     * @param gasC temperature of the gas in °C, -40 to 2500
     * @return 0 to 1, the share of a black body's radiation
     * @throws RefusedException where the temperature is outside its range or not a number
     */
    public double emissivity(double gasC) {
        double kelvin = Math.min(Math.max(TEMPERATURE.require("gasC", gasC) + Constants.KELVIN_AT_ZERO_C, 600), 2400);
        double path = (carbonDioxideAtm + waterVapourAtm) * meanBeamM;
        double watery = Math.min(Math.max(waterVapourAtm / Math.max(carbonDioxideAtm, 1e-9) - 1, 0), 1);
        return (1 - watery) * sum(EVEN, path, kelvin) + watery * sum(TWICE_THE_WATER, path, kelvin);
    }

    private static double sum(List<GreyGas> gases, double pathAtmM, double kelvin) {
        double sum = 0;
        for (GreyGas gas : gases) {
            sum += gas.emissivity(pathAtmM, kelvin);
        }
        return sum;
    }

    /** One grey gas: its absorption in 1/(atm m) and its weight as a cubic in the temperature in K. */
    private record GreyGas(double absorption, double b0, double b1, double b2, double b3) {

        double emissivity(double pathAtmM, double kelvin) {
            double weight = b0 + kelvin * (b1 + kelvin * (b2 + kelvin * b3));
            return -weight * Math.expm1(-absorption * pathAtmM);
        }
    }
}
