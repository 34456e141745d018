package loftcoil.engine.use;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Hot water a household draws on a mean day. People differ by half or more either way; a bothy without a shower room draws
 * far less.
 */
public final class Demand {

    /** The numbers of people accepted. */
    public static final Allowed PEOPLE = new Allowed(1, 50, "people");

    /** Where hot water in litres a day is reckoned from, in SIA 385/2: hot at 60 °C, cold at 10 °C. */
    private static final double SIA_SPAN_K = 50;

    private Demand() {}

    /**
     * Mean draw of a British household: 46 + 26 N litres, delivered at about 52 °C. Energy Saving Trust for Defra, Measurement of
     * Domestic Hot Water Consumption in Dwellings, 2008 (120 dwellings, mean 122 ± 18 L/day); the formula from memory.
     *
     * @param people how many live there, 1 to 50
     * @return L/day
     * @throws RefusedException where the number is outside its range
     */
    public static double householdLPerDay(int people) {
        return 46 + 26 * PEOPLE.require("people", people);
    }

    /** How much comfort is planned for: SIA 385/2, Switzerland, litres of 60 °C for each person and day. */
    public enum Comfort {
        /** 40 L. */
        SIMPLE(40),
        /** 45 L. */
        MEDIUM(45),
        /** 55 L. */
        HIGH(55);

        private final double at60LPerDay;

        Comfort(double at60LPerDay) {
            this.at60LPerDay = at60LPerDay;
        }

        /** Litres of 60 °C for each person and day, with cold of 10 °C. */
        public double at60LPerDay() {
            return at60LPerDay;
        }
    }

    /**
     * Planning value of SIA 385/2 for other temperatures: litres × 50 K / (hot − cold).
     *
     * @param comfort how much is planned for
     * @param hotC temperature of the hot in °C, 20 to 95
     * @param coldC temperature of the cold in °C, 0 to 19
     * @return L/day for each person
     * @throws RefusedException where a temperature is outside its range or not a number
     */
    public static double plannedLPerPersonDay(Comfort comfort, double hotC, double coldC) {
        double hot = new Allowed(20, 95, "°C").require("hotC", hotC);
        double cold = new Allowed(0, 19, "°C").require("coldC", coldC);
        return comfort.at60LPerDay() * SIA_SPAN_K / (hot - cold);
    }
}
