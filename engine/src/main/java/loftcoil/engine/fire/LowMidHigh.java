package loftcoil.engine.fire;

/**
 * An estimate with what it may be at worst either way, about two chances in three that the truth lies between.
 *
 * @param low lower end
 * @param mid best estimate
 * @param high upper end
 */
public record LowMidHigh(double low, double mid, double high) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException where the values are not finite and in order
     */
    public LowMidHigh {
        if (!(low <= mid && mid <= high && Double.isFinite(low) && Double.isFinite(high))) {
            throw new IllegalArgumentException("not in order: " + low + ", " + mid + ", " + high);
        }
    }

    /** The same with both ends drawn in to what is possible at all; the best estimate stays. */
    LowMidHigh within(double least, double most) {
        return new LowMidHigh(Math.min(Math.max(low, least), mid), mid, Math.max(Math.min(high, most), mid));
    }

    /** A figure that is known: low, mid and high alike. */
    public static LowMidHigh known(double value) {
        return new LowMidHigh(value, value, value);
    }
}
