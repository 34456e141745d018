package loftcoil.engine.words;

/**
 * A number with what it measures.
 *
 * @param value the number, in the metric unit that the kind names (so a volume is in L, a time in min)
 * @param kind what it measures
 * @param finer how many decimal places are written beyond what its kind has; usually 0, below it for fewer
 * @param bare whether it is written without its unit because that follows, as the 25 of "25 and 45 °C"; usually not
 */
public record Measure(double value, MeasureKind kind, int finer, boolean bare) implements MeasuredText.Part {

    private static final double HANDBREADTH_M = 0.1;
    private static final double SMALL = 10;
    private static final double SMALLER = 1;
    private static final double LARGE = 100;
    private static final double PER_CENT = 100;

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException where it is not finite: a figure that is not known is left out, never written as NaN
     */
    public Measure {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no " + kind + ": " + value);
        }
    }

    /** A number written with the decimal places of its kind. */
    public Measure(double value, MeasureKind kind) {
        this(value, kind, 0, false);
    }

    /** The same, written with this many decimal places more, or fewer where it is below 0. */
    public Measure finer(int places) {
        return new Measure(value, kind, places, bare);
    }

    /** The same, written without its unit. */
    public Measure withoutUnit() {
        return new Measure(value, kind, finer, true);
    }

    /** A length in m. */
    public static Measure metres(double metres) {
        return new Measure(metres, MeasureKind.LENGTH_M);
    }

    /** A length in m as it is read off a tape. */
    public static Measure taped(double metres) {
        return new Measure(metres, MeasureKind.TAPE_M);
    }

    /** A small length in mm. */
    public static Measure millimetres(double millimetres) {
        return new Measure(millimetres, MeasureKind.SMALL_LENGTH_MM);
    }

    /** A mass in kg. */
    public static Measure kilograms(double kilograms) {
        return new Measure(kilograms, MeasureKind.MASS_KG);
    }

    /** A volume in L. */
    public static Measure litres(double litres) {
        return new Measure(litres, MeasureKind.VOLUME_L);
    }

    /** A flow in L/min. */
    public static Measure litresPerMin(double litresPerMin) {
        return new Measure(litresPerMin, MeasureKind.FLOW_L_PER_MIN);
    }

    /** A temperature in °C. */
    public static Measure celsius(double tempC) {
        return new Measure(tempC, MeasureKind.TEMP_C);
    }

    /** A difference of temperatures in K, shown in °C. */
    public static Measure kelvins(double kelvins) {
        return new Measure(kelvins, MeasureKind.TEMP_DIFF_K);
    }

    /** A heat flow in W. */
    public static Measure watts(double watts) {
        return new Measure(watts, MeasureKind.POWER_W);
    }

    /** A pressure in Pa. */
    public static Measure pascals(double pascals) {
        return new Measure(pascals, MeasureKind.PRESSURE_PA);
    }

    /** A time in min. */
    public static Measure minutes(double minutes) {
        return new Measure(minutes, MeasureKind.TIME_MIN);
    }

    /** A number of pieces. */
    public static Measure count(int pieces) {
        return new Measure(pieces, MeasureKind.COUNT);
    }

    /** A number written with just so many decimal places, whatever its size. */
    public static Measure rounded(double value, MeasureKind kind, int decimals) {
        return new Measure(value, kind).finer(decimals - new Measure(value, kind).decimals());
    }

    /** The number in metric units with its unit, such as {@code 1.45 m}. */
    @Override
    public String metric() {
        return Units.METRIC.of(this);
    }

    /** The number in metric units alone, with the sign of a minus, never with an exponent; nought has no sign, a length on a tape has its unit. */
    public String number() {
        if (kind == MeasureKind.CLOCK_H) {
            return ClockTime.of24(value);
        }
        if (kind == MeasureKind.TAPE_M) {
            return TapeMeasure.metric(value, finer);
        }
        double written = kind == MeasureKind.SHARE ? PER_CENT * value : value;
        return Numeral.fixed(written, Math.max(0, Math.min(most(), decimals() + finer)));
    }

    /** The most decimal places that mean something, however many are asked for. */
    private int most() {
        return kind == MeasureKind.TIME_H && Math.abs(value) >= LARGE ? 0 : Integer.MAX_VALUE;
    }

    /** Small flows and weights keep a figure more, or nothing would be left of them; large ones need none. */
    private int decimals() {
        double size = Math.abs(value);
        return switch (kind) {
            case LENGTH_M -> kind.decimals() + (size < HANDBREADTH_M && size > 0 ? 1 : 0);
            case FLOW_L_PER_MIN, PRESSURE_PA -> kind.decimals() + (size < SMALLER && size > 0 ? 1 : 0);
            case MASS_KG, VOLUME_L -> size >= LARGE ? 0 : size < SMALL && size > 0 ? 2 : kind.decimals();
            case TIME_S -> kind.decimals() + (size < SMALL ? 1 : 0);
            case ENERGY_KWH -> size >= LARGE ? 0 : kind.decimals();
            default -> kind.decimals();
        };
    }
}
