package loftcoil.engine.run;

import loftcoil.engine.water.Saturation;

/**
 * One month of a year's run, or all twelve together.
 *
 * @param month 1 to 12; 0 for the whole year
 * @param energy the account of the month
 * @param shortfallKWh heat missing at the taps against what was wanted
 * @param woodKg wood burnt, moist as it is
 * @param hottestC hottest water in the tank
 * @param boilingMin minutes in which water boiled in the loop or the tank
 * @param litres what came out of the taps
 */
public record MonthRow(
        int month,
        EnergyBook energy,
        double shortfallKWh,
        double woodKg,
        double hottestC,
        double boilingMin,
        Litres litres) {

    /** Heat that makes steam of a kilogram of water at 100 °C; at 4000 m it is 1.5 % more. */
    private static final double EVAPORATION_J_PER_KG = Saturation.evaporationJPerKg(100);

    /** Water that left as steam, L as it is filled up again cold: what the heat lost as steam evaporates. */
    public double steamL() {
        return energy.losses().steam() * Totals.J_PER_KWH / EVAPORATION_J_PER_KG;
    }

    static MonthRow of(int month, Totals counted, double burnKgPerH, double hottestC) {
        return new MonthRow(
                month,
                counted.book(),
                counted.shortJ() / Totals.J_PER_KWH,
                counted.times().litS() / 3600 * burnKgPerH,
                hottestC,
                counted.times().boiledS() / 60,
                counted.litres());
    }
}
