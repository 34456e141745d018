package loftcoil.runner.show;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;

/** Numbers as a person reads them. */
final class Digits {

    private static final Set<String> DECIMAL = Set.of("double", "float", "Double", "Float");
    /** What a call of {@code printf} comes to: it says nothing beside what was printed. */
    private static final Set<String> NOT_WORTH_SHOWING = Set.of("PrintStream", "java.io.PrintStream");

    private static final int SHOWN = 5;

    private Digits() {}

    /**
     * The value of a snippet, decimals cut to five significant digits; anything else as Java writes it;
     * empty where it says nothing.
     *
     * @param value as Java writes it
     * @param type its Java type
     */
    static String of(String value, String type) {
        if (NOT_WORTH_SHOWING.contains(type)) {
            return "";
        }
        if (!DECIMAL.contains(type)) {
            return value;
        }
        try {
            return of(Double.parseDouble(value), SHOWN);
        } catch (NumberFormatException notANumber) {
            return value;
        }
    }

    /**
     * A number with so many significant digits, without an exponent where it is of everyday size.
     *
     * @param value the number
     * @param significant how many digits, at least 1
     */
    static String of(double value, int significant) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(significant));
        double size = Math.abs(value);
        if (size < 1e-5 || size >= 1e9) {
            return rounded.stripTrailingZeros().toString().replace("E", "e");
        }
        String plain = rounded.toPlainString();
        return plain.contains(".") ? plain.replaceAll("0+$", "").replaceAll("\\.$", "") : plain;
    }
}
