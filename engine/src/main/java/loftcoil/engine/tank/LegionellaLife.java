package loftcoil.engine.tank;

/**
 * Where legionella grow and how fast they die: the one law of all rules, sentences and lessons.
 *
 * <p>They multiply from {@value #GROWS_FROM_C} to {@value #GROWS_TO_C} °C (HSE, Approved Code of Practice L8 and HSG274 part 2,
 * read as restated in public; the World Health Organization, Legionella and the prevention of legionellosis, 2007, has growth from
 * 25 °C in the water it names and little or none below 20, so that the lower end is the safe one). From {@value #DIES_FROM_C} °C
 * they die: 2 minutes for nine in ten at 60 °C and 80 to 124 minutes, depending on strain, at 50 °C (WHO 2007 after Dennis et
 * al., restated), its logarithm straight between, the lower point at the geometric mean of its range: tenfold in 5.9 K.
 */
public final class LegionellaLife {

    /** From here they multiply, °C. */
    public static final double GROWS_FROM_C = 20;

    /** Above this they multiply no more, °C. */
    public static final double GROWS_TO_C = 45;

    /** From here they die, °C. */
    public static final double DIES_FROM_C = 50;

    /** Up to here the law of dying is held to, °C; hotter water is counted as if it were at this. */
    public static final double DIES_TO_C = 70;

    private static final double AT_50_MIN = Math.sqrt(80.0 * 124.0);
    private static final double AT_60_MIN = 2;
    private static final double LOG_PER_K = Math.log(AT_60_MIN / AT_50_MIN) / 10;

    /** Powers of ten that die in half an hour at 60 °C, which is what most rules call heated through. */
    public static final double THOROUGH_DECADES = 30 / AT_60_MIN;

    private LegionellaLife() {}

    /**
     * Time for nine in ten to die.
     *
     * @param waterC temperature of the water in °C, 50 to 70; hotter counts as 70
     * @return min
     */
    public static double ninetyPercentMin(double waterC) {
        return AT_50_MIN * Math.exp(LOG_PER_K * (Math.min(waterC, DIES_TO_C) - 50));
    }

    /**
     * Powers of ten that die in a second.
     *
     * @param waterC as {@link #ninetyPercentMin}
     */
    public static double decadesPerS(double waterC) {
        return 1 / (60 * ninetyPercentMin(waterC));
    }
}
