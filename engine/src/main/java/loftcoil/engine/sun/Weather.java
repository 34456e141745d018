package loftcoil.engine.sun;

/** The weather of a place's days, all alike in it. */
public enum Weather {
    /** The mean day of each month. */
    MEAN,
    /** Not a cloud, and warmer than the month's mean. */
    CLEAR,
    /** As dull as the worst week of a month, at the month's mean air. */
    DULL;

    /**
     * Sun of a dull week over that of the month's mean week. Typical-year files of three places (45° N 8° E, Amsterdam, Sand Point
     * in Alaska) give 0.38 to 0.80 from November to February, 0.59 in the mean of the twelve.
     */
    public static final double DULL_SHARE = 0.5;

    /** Mean air of a clear week above that of the month, K; common practice, no source. */
    static final double CLEAR_WARMER_K = 5;

    /** How much warmer than the month's mean its air is, K. */
    public double warmerK() {
        return this == CLEAR ? CLEAR_WARMER_K : 0;
    }
}
