package loftcoil.engine.water;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Air dissolved in water that has stood in it until no more goes in: Henry's law with the constants of IAPWS G7-04, equation 1,
 * for nitrogen, oxygen and argon of dry air, over the vapour pressure of the water itself ({@link Saturation}).
 *
 * <p>The guideline holds from 274 K for oxygen and from 278 K for nitrogen; from there down to 0 °C the equation is followed
 * beyond it. Oxygen lies within 1.1 % of the tables up to 40 °C. Gas from carbonates in hard water comes on top and is left out.
 * Real water from a spring or a pipe may hold less, and under pressure more.
 */
public final class DissolvedAir {

    /** The absolute pressures accepted, in Pa. */
    public static final Allowed PRESSURE = new Allowed(40_000, 400_000, "Pa");

    /** A litre of gas at 0 °C and 101 325 Pa, as the tables count it, is so many mol. */
    private static final double MOL_PER_L = 1 / 22.414;

    private static final double CRITICAL_K = 647.096;
    private static final double WATER_KG_PER_MOL = 0.01801528;
    private static final double OXYGEN_G_PER_MOL = 31.9988;

    /** A gas of the air: its share of the dry air by volume, and A, B, C of IAPWS G7-04(2004), table 1. */
    private enum Gas {
        NITROGEN(0.78084, -9.67578, 4.72162, 11.70585),
        OXYGEN(0.20946, -9.44833, 4.43822, 11.42005),
        ARGON(0.00934, -8.40954, 4.29587, 10.52779);

        private final double share;
        private final double a;
        private final double b;
        private final double c;

        Gas(double share, double a, double b, double c) {
            this.share = share;
            this.a = a;
            this.b = b;
            this.c = c;
        }

        /** Pressure of this gas over its share of the molecules in the water, Pa; {@code boilPa} is the water's own. */
        double henryPa(double tempC, double boilPa) {
            double warmth = (tempC + Constants.KELVIN_AT_ZERO_C) / CRITICAL_K;
            double tau = 1 - warmth;
            double power = a / warmth + b * Math.pow(tau, 0.355) / warmth + c * Math.pow(warmth, -0.41) * Math.exp(tau);
            return boilPa * Math.exp(power);
        }
    }

    private DissolvedAir() {}

    /**
     * Air that water can hold.
     *
     * @param tempC temperature in °C, 0 to 110
     * @param pressurePa absolute pressure where the water is, that of the air and of the water above, in Pa, 40 000 to 400 000
     * @return mL of air, counted at 0 °C and 101 325 Pa as the tables do, for each litre of water; 0 where the water boils
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double mLPerL(double tempC, double pressurePa) {
        double mol = 0;
        for (Gas gas : Gas.values()) {
            mol += molPerL(gas, tempC, pressurePa);
        }
        return 1000 * mol / MOL_PER_L;
    }

    /**
     * Oxygen that water can hold, the part of the air that tables print most often.
     *
     * @param tempC temperature in °C, 0 to 110
     * @param pressurePa absolute pressure in Pa, 40 000 to 400 000
     * @return mg for each litre; 0 where the water boils
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double oxygenMgPerL(double tempC, double pressurePa) {
        return 1000 * OXYGEN_G_PER_MOL * molPerL(Gas.OXYGEN, tempC, pressurePa);
    }

    /**
     * How large a bubble of air becomes under hot water: it is warm, and water evaporates into it.
     *
     * @param tempC temperature in °C, 0 to 110
     * @param pressurePa absolute pressure in Pa, 40 000 to 400 000
     * @return volume of the bubble over that of its air at 0 °C and 101 325 Pa; without bound where the water boils
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static double bubbleSwell(double tempC, double pressurePa) {
        double airPa = airPa(tempC, pressurePa);
        return airPa > 0
                ? (tempC + Constants.KELVIN_AT_ZERO_C)
                        / Constants.KELVIN_AT_ZERO_C
                        * Constants.STANDARD_ATMOSPHERE_PA
                        / airPa
                : Double.POSITIVE_INFINITY;
    }

    private static double molPerL(Gas gas, double tempC, double pressurePa) {
        double airPa = airPa(tempC, pressurePa);
        double share = gas.share * airPa / gas.henryPa(tempC, Saturation.pressurePa(tempC));
        return share * Water.densityKgPerM3(tempC) / 1000 / WATER_KG_PER_MOL;
    }

    /** What of the pressure is left for the air beside the water's own vapour, Pa; 0 where the water boils. */
    private static double airPa(double tempC, double pressurePa) {
        Water.TEMPERATURE.require("tempC", tempC);
        return Math.max(0, PRESSURE.require("pressurePa", pressurePa) - Saturation.pressurePa(tempC));
    }
}
