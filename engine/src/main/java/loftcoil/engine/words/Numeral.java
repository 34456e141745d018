package loftcoil.engine.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * The one writer of numbers; a {@link Measure} tells which digits a kind needs. Halves are rounded away from nought, and nought
 * has no sign. What is read has a true minus, and a number that is very large or very small is a power of ten, such as
 * {@code 7.76 × 10⁻¹⁶}. What is typed back, into JSON, Java or a change, has a hyphen ({@link #typed}); whoever reads what was
 * typed takes both ({@link #hyphened}).
 */
public final class Numeral {

    private static final double LEAST = 1e-6;
    private static final double MOST = 1e9;
    /** What stands for a minus where people write: minus, figure dash, en dash, and two of wide forms. */
    private static final Pattern MINUS = Pattern.compile("[\\u2212\\u2012\\u2013\\uFE63\\uFF0D]");

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
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits));
        return isFar(size) ? powerOfTen(rounded) : minus(plain(rounded));
    }

    /**
     * Whether numbers of that size are written as powers of ten.
     *
     * @param size how large, without its sign
     */
    public static boolean isFar(double size) {
        return size > 0 && (size < LEAST || size >= MOST);
    }

    /**
     * All digits of a number, as JSON and Java read it.
     *
     * @param value any number
     */
    public static String typed(double value) {
        return Double.isFinite(value) ? plain(BigDecimal.valueOf(value)) : Double.toString(value);
    }

    /**
     * The same with so many significant digits.
     *
     * @param value any number
     * @param digits how many digits at most, at least 1
     */
    public static String typed(double value, int digits) {
        return Double.isFinite(value)
                ? plain(BigDecimal.valueOf(value).round(new MathContext(digits)))
                : Double.toString(value);
    }

    /**
     * The same with so many decimals at most.
     *
     * @param value any number
     * @param decimals digits after the point at most, 0 or more
     */
    public static String typedTo(int decimals, double value) {
        return Double.isFinite(value)
                ? plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP))
                : Double.toString(value);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** What a person typed, each sign of a minus a hyphen. */
    public static String hyphened(String typed) {
        return MINUS.matcher(typed).replaceAll("-");
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
        if (unit.isEmpty() || unit.equals("%")) {
            return number + unit;
        }
        // The one unit that is a word of its own.
        return number + " " + (unit.equals("day") && !number.equals("1") ? "days" : unit);
    }
}
