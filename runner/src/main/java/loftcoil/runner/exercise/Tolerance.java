package loftcoil.runner.exercise;

/**
 * How far an answer may be off. Where both are given the wider one counts.
 *
 * @param absolute in the reference's unit, not negative
 * @param relative as a ratio of the reference, 0.02 for two per cent, not negative
 * @param safe to which side an answer may be rounded, where one of them is safe
 */
public record Tolerance(double absolute, double relative, Safe safe) {

    /** Which side of the reference is the safe one. */
    public enum Safe {
        /** Neither: an answer is rounded to the nearest. */
        NEITHER,
        /** The most that is allowed is asked for: rounded down it is as right. */
        BELOW,
        /** The least that is needed is asked for: rounded up it is as right. */
        ABOVE
    }

    /** A tolerance without a safe side. */
    public Tolerance(double absolute, double relative) {
        this(absolute, relative, Safe.NEITHER);
    }

    /** Checks both. */
    public Tolerance {
        if (!(absolute >= 0 && relative >= 0)) {
            throw new IllegalArgumentException("tolerance " + absolute + ", " + relative + "; allowed: 0 or more");
        }
    }

    /**
     * True where the answer is near enough. Never true for a NaN or an infinity on either side. Against a reference of zero
     * a relative tolerance allows zero alone.
     *
     * @param reference the value to meet
     * @param answer the value given, in the same unit
     */
    public boolean allows(double reference, double answer) {
        double off = Math.abs(answer - reference);
        // A few units in the last place, so that 0.1 + 0.2 is not off 0.3 where no tolerance is left.
        double rounding = 4 * Math.ulp(reference);
        return Double.isFinite(off) && off <= Math.max(absolute, relative * Math.abs(reference)) + rounding;
    }

    /** The tolerance of a reference that is so many times as large. */
    public Tolerance times(double factor) {
        return new Tolerance(absolute * Math.abs(factor), relative, safe);
    }
}
