package loftcoil.engine.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes bare numbers for people; a {@link Measure} writes those with a kind. Halves are rounded away from nought. A number that is
 * very large or very small is written as a power of ten, such as {@code 7.76 × 10⁻¹⁶}, never in a programmer's way.
 */
public final class Numeral {

    private static final double LEAST = 1e-6;
    private static final double MOST = 1e9;
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private Numeral() {}

    /**
     * A number with so many significant digits, noughts at the end left out.
     *
     * @param value any number
     * @param digits how many digits at most, at least 1
     */
    public static String shown(double value, int digits) {
        double size = Math.abs(value);
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        return size > 0 && (size < LEAST || size >= MOST)
                ? powerOfTen(BigDecimal.valueOf(value).round(new MathContext(digits)))
                : plain(value, digits);
    }

    /**
     * The same without powers of ten and with a hyphen for a minus: for what is read by a program again.
     *
     * @param value a finite number
     * @param digits how many digits at most, at least 1
     */
    public static String plain(double value, int digits) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * A number with just so many decimals, and a true minus.
     *
     * @param value a finite number
     * @param decimals digits after the point, 0 or more
     */
    public static String fixed(double value, int decimals) {
        return minus(BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString());
    }

    /** A number other than 0 as a power of ten, such as 1.5 × 10²⁰. */
    public static String powerOfTen(BigDecimal value) {
        int power = value.precision() - value.scale() - 1;
        StringBuilder raised = new StringBuilder(power < 0 ? "⁻" : "");
        String.valueOf(Math.abs(power)).chars().forEach(digit -> raised.append(RAISED.charAt(digit - '0')));
        String mantissa = value.scaleByPowerOfTen(-power).stripTrailingZeros().toPlainString();
        return minus(mantissa) + " × 10" + raised;
    }

    /** With a true minus sign, and none before zero. */
    public static String minus(String text) {
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? text.replace("-", "") : text.replace('-', '−');
    }

    /** A number with its unit behind it; a per cent sign stands close. */
    public static String withUnit(String number, String unit) {
        return unit.isEmpty() || unit.equals("%") ? number + unit : number + " " + unit;
    }
}
