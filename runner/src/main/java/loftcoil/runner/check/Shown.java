package loftcoil.runner.check;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes numbers for replies. */
final class Shown {

    private Shown() {}

    /** Six digits at most, without exponent where that reads well. */
    static String number(double value) {
        return rounded(value, 6);
    }

    /** Four digits at most: for what was converted. */
    static String converted(double value) {
        return rounded(value, 4);
    }

    /** Twelve digits at most: for what is computed with. */
    static String precise(double value) {
        return rounded(value, 12);
    }

    static String withUnit(String number, String unit) {
        return unit.isEmpty() || unit.equals("%") ? number + unit : number + " " + unit;
    }

    private static String rounded(double value, int digits) {
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        boolean plain = value == 0 || (Math.abs(value) >= 1e-6 && Math.abs(value) < 1e9);
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
