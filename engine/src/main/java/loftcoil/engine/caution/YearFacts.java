package loftcoil.engine.caution;

/**
 * What a year marched through says about dangers.
 *
 * @param hottestTankC hottest water anywhere in the tank, °C
 * @param coldestTankC coldest water anywhere in the tank, °C
 * @param hottestDrawC hottest water at the draw port, °C
 * @param leastAirC coldest air outside, °C
 * @param longestWarmDays longest time, days on end, 0 to 365, in which at some hour of every day water between 20 and 45 °C
 *     stood somewhere in the tank and the whole of it was never kept at 60 °C for half an hour, or for as long as kills as many
 *     germs at another temperature
 * @param boilingH time in which water boils in loop or tank, h
 * @param steamL water that leaves as steam, L
 */
public record YearFacts(
        double hottestTankC,
        double coldestTankC,
        double hottestDrawC,
        double leastAirC,
        double longestWarmDays,
        double boilingH,
        double steamL) {

    /** A year in which nothing boils. */
    public YearFacts(
            double hottestTankC, double coldestTankC, double hottestDrawC, double leastAirC, double longestWarmDays) {
        this(hottestTankC, coldestTankC, hottestDrawC, leastAirC, longestWarmDays, 0, 0);
    }

    /** What a march in layers may leave the hottest water too cool by, K; every verdict on it adds so much. */
    public static final double BLUR_K = 1;

    /** What a march in layers may leave out of the heat missing at the taps, as a share of the heat wanted; every verdict on it adds so much. */
    static final double BLUR_SHARE = 0.005;
}
