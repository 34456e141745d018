package loftcoil.runner.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.words.Numeral;

/**
 * Round numbers along an axis, one, two or five times a power of ten apart.
 *
 * @param step distance between two, above zero
 * @param first the lowest, as a whole number of steps
 * @param last the highest, as a whole number of steps
 */
record Ticks(BigDecimal step, long first, long last) {

    /** A range narrower than this part of its size is a flat line with rounding noise. */
    private static final double FLAT = 1e-9;

    /** More characters than this leave no room for the plot. */
    private static final int LONGEST = 12;

    /** Ticks that enclose a range, about as many as wished. */
    static Ticks around(double low, double high, int wished) {
        double size = Math.max(Math.abs(low), Math.abs(high));
        double from = low;
        double to = high;
        if (to - from <= size * FLAT) {
            double room = size == 0 ? 1 : size / 2;
            from = low - room;
            to = high + room;
        }
        BigDecimal step = roundUp((to - from) / wished);
        double width = step.doubleValue();
        // A hair of forgiveness, so that 0.30000000000000004 does not ask for one more step.
        long first = (long) Math.floor(from / width + FLAT);
        long last = (long) Math.ceil(to / width - FLAT);
        return new Ticks(step, first, Math.max(last, first + 1));
    }

    /** Ticks that stand within a range, for an axis that ends where the data does. */
    static Ticks within(double low, double high, int wished) {
        Ticks around = around(low, high, wished);
        double width = around.step.doubleValue();
        long first = (long) Math.ceil(low / width - FLAT);
        long last = (long) Math.floor(high / width + FLAT);
        return last > first ? new Ticks(around.step, first, last) : around;
    }

    private static BigDecimal roundUp(double least) {
        int power = (int) Math.floor(Math.log10(least));
        for (int digit : new int[] {1, 2, 5}) {
            BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
            if (step.doubleValue() >= least * (1 - FLAT)) {
                return step;
            }
        }
        return BigDecimal.ONE.scaleByPowerOfTen(power + 1);
    }

    /** The numbers, lowest first. */
    List<BigDecimal> values() {
        List<BigDecimal> values = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            values.add(step.multiply(BigDecimal.valueOf(i)));
        }
        return values;
    }

    double low() {
        return step.doubleValue() * first;
    }

    double high() {
        return step.doubleValue() * last;
    }

    /** A tick as text, with as many decimals as the step has; as a power of ten where that would be long. */
    String text(BigDecimal value) {
        int decimals = Math.max(0, step.stripTrailingZeros().scale());
        String plain = value.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        return plain.length() > LONGEST && value.signum() != 0
                ? Numeral.powerOfTen(value)
                : Numeral.minus(plain.length() > LONGEST ? "0" : plain);
    }
}
