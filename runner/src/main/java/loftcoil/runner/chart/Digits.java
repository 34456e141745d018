package loftcoil.runner.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import loftcoil.engine.words.Numeral;

/**
 * Numbers of one column as text, all with the same decimals: about three digits of the span they cover. Very large and
 * very small ones are written as powers of ten.
 *
 * @param decimals digits after the point, 0 or more; {@value #POWERS} for powers of ten
 */
record Digits(int decimals) {

    private static final int KEPT = 3;
    private static final int MOST_DECIMALS = 9;
    private static final int POWERS = -1;

    /** Digits that tell values apart. */
    static Digits forAll(List<Double> values) {
        return of(values, KEPT);
    }

    /** Digits that tell positions apart: one more, since they are often set in quarters or eighths. */
    static Digits forPositions(List<Double> positions) {
        return of(positions, KEPT + 1);
    }

    private static Digits of(List<Double> values, int kept) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        double span = high - low;
        double size = span > 0 ? span : Math.abs(high);
        if (!Double.isFinite(size) || size == 0) {
            return new Digits(0);
        }
        if (Numeral.isFar(Math.max(Math.abs(low), Math.abs(high))) || Numeral.isFar(size)) {
            return new Digits(POWERS);
        }
        int needed = kept - 1 - (int) Math.floor(Math.log10(size));
        int most = Math.max(0, Math.min(needed, MOST_DECIMALS));
        return new Digits(fewest(values, most));
    }

    /** As few decimals as lose nothing against the most allowed. */
    private static int fewest(List<Double> values, int most) {
        int fewest = 0;
        for (double value : values) {
            if (Double.isFinite(value)) {
                BigDecimal rounded = BigDecimal.valueOf(value).setScale(most, RoundingMode.HALF_UP);
                fewest = Math.max(fewest, rounded.stripTrailingZeros().scale());
            }
        }
        return Math.min(fewest, most);
    }

    /** A number; a dash where it is none. */
    String text(double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        return decimals == POWERS ? Numeral.shown(value, KEPT + 1) : Numeral.fixed(value, decimals);
    }
}
