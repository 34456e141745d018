package loftcoil.engine.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;
import loftcoil.engine.constant.Constants;

/**
 * What a US workshop measures with in place of a metric unit, and how it writes the number.
 *
 * <p>Factors are exact where the definition is: 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 US gal = 231 in³, 1 Btu (IT) = 1055.05585262 J,
 * 1 lbf by the standard 9.80665 m/s² (NIST Special Publication 811, 2008, appendix B.8). Water columns are at 4 °C and 1000 kg/m³.
 *
 * @param unit how it is written; empty where it stands within the number, as with feet and inches
 * @param typed unit of a number that somebody types without one, and of an axis
 * @param one one of that unit, in the metric unit of the kind
 * @param nought the metric value at which it reads nought
 * @param style how the number is written
 * @param places decimal places
 * @param finerBelow size below which one place more is written
 */
record UsUnit(String unit, String typed, double one, double nought, Style style, int places, double finerBelow) {

    static final double M_PER_FT = 0.3048;
    static final double M_PER_IN = 0.0254;
    static final double KG_PER_LB = 0.45359237;
    static final double L_PER_GAL = 231 * 0.254 * 0.254 * 0.254;
    static final double J_PER_BTU = 1055.05585262;
    static final double K_PER_F = 5.0 / 9;
    static final double N_PER_LBF = KG_PER_LB * Constants.GRAVITY_M_PER_S2;
    static final double FREEZING_F = 32;
    static final double W_PER_BTU_H = J_PER_BTU / 3600;
    static final double PA_PER_PSI = N_PER_LBF / (M_PER_IN * M_PER_IN);
    static final double PA_PER_IN_OF_WATER = 1000 * Constants.GRAVITY_M_PER_S2 * M_PER_IN;
    static final double MG_PER_GRAIN = 64.79891;

    private static final double HANDBREADTH_M = 0.1;
    private static final int SIGNIFICANT = 3;
    private static final double HALF_A_HUNDREDTH = 0.005;

    /** Between digits before the point, where so many threes follow up to it. */
    private static final Pattern THOUSANDS = Pattern.compile("(?<=^−?\\d{1,12})(?=(?:\\d{3})+(?:\\.|$))");

    /** How a number is written. */
    enum Style {
        /** As in metric units: the unit is the same. */
        ALIKE,
        /** Feet and inches of a tape. */
        FEET,
        /** Inches of a tape. */
        INCHES,
        /** Twice twelve hours. */
        CLOCK,
        /** So many places. */
        PLACES,
        /** Three digits that count. */
        DIGITS,
        /** Two digits that count, or down to tenths: gallons are so large that a third is worth nothing. */
        COARSE
    }

    static UsUnit alike() {
        return new UsUnit("", "", 1, 0, Style.ALIKE, 0, 0);
    }

    static UsUnit clock() {
        return new UsUnit("", "", 1, 0, Style.CLOCK, 0, 0);
    }

    static UsUnit tape(Style style, String typed, double one) {
        return new UsUnit("", typed, one, 0, style, 0, 0);
    }

    static UsUnit places(int places, String unit, double one) {
        return new UsUnit(unit, unit, one, 0, Style.PLACES, places, 0);
    }

    static UsUnit digits(String unit, double one) {
        return new UsUnit(unit, unit, one, 0, Style.DIGITS, 0, 0);
    }

    static UsUnit coarse(String unit, double one) {
        return new UsUnit(unit, unit, one, 0, Style.COARSE, 0, 0);
    }

    UsUnit finerBelow(double size) {
        return new UsUnit(unit, typed, one, nought, style, places, size);
    }

    UsUnit from(double metric) {
        return new UsUnit(unit, typed, one, metric, style, places, finerBelow);
    }

    UsUnit typedAs(String name) {
        return new UsUnit(unit, name, one, nought, style, places, finerBelow);
    }

    boolean isAlike() {
        return style == Style.ALIKE;
    }

    boolean isTape() {
        return style == Style.FEET || style == Style.INCHES;
    }

    /** The number in this unit. */
    double of(double metric) {
        return (metric - nought) / one;
    }

    /** The number in the metric unit. */
    double metric(double us) {
        return us * one + nought;
    }

    /** The number as written; {@code finer} places more, or fewer below 0. */
    String number(Measure measure) {
        double us = of(measure.value());
        int finer = measure.finer();
        return switch (style) {
            case ALIKE -> measure.number();
            case FEET ->
                TapeMeasure.feet(measure.value() / M_PER_IN, isHandbreadth(measure) ? Math.max(1, finer) : finer);
            case INCHES -> TapeMeasure.inches(us, finer);
            case CLOCK -> ClockTime.twiceTwelve(us);
            case PLACES -> decimals(us, places + (us != 0 && Math.abs(us) < finerBelow ? 1 : 0) + finer);
            case COARSE -> decimals(us, coarsePlaces(us));
            case DIGITS -> isNought(measure) ? "0" : digits(us, Math.max(0, finer - 1));
        };
    }

    /** A gap that somebody has to find is told to a sixteenth of an inch. */
    private static boolean isHandbreadth(Measure measure) {
        return measure.kind() == MeasureKind.TAPE_M && Math.abs(measure.value()) < HANDBREADTH_M;
    }

    /** What reads nought in metric units is noise: nobody is told of a thousandth of a kWh in Btu. */
    private static boolean isNought(Measure measure) {
        return measure.number().chars().noneMatch(sign -> sign >= '1' && sign <= '9');
    }

    static String decimals(double value, int places) {
        return THOUSANDS.matcher(Numeral.fixed(value, Math.max(0, places))).replaceAll(",");
    }

    /** Tenths from 1 on, hundredths from a tenth on, thousandths below it; by the number as it is written, so 0.996 is 1.0. */
    private static int coarsePlaces(double us) {
        double size = Math.abs(us);
        return size >= 1 - HALF_A_HUNDREDTH ? 1 : size == 0 || size >= (1 - HALF_A_HUNDREDTH) / 10 ? 2 : 3;
    }

    /** Three digits, thousands set apart. */
    private static String digits(double value, int more) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(Math.max(1, SIGNIFICANT + more)));
        return decimals(rounded.doubleValue(), Math.max(0, value == 0 ? 0 : rounded.scale()));
    }
}
