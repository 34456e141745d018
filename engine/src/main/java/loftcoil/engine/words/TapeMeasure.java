package loftcoil.engine.words;

import java.math.BigDecimal;

/** Lengths as a tape measure shows them. */
public final class TapeMeasure {

    private static final int INCHES_IN_FOOT = 12;
    /** Levels and runs: to a quarter inch, 6 mm. */
    private static final int QUARTERS = 4;
    /** Cuts: to a sixteenth, 1.6 mm, as a tape is marked. */
    private static final int SIXTEENTHS = 16;

    private static final int THIRTY_SECONDS = 32;
    /** Below this an inch is written as a decimal, as walls are sold; a sixteenth would be a quarter of it. */
    private static final double DECIMAL_BELOW_IN = 0.24;

    private static final double FINE_BELOW_IN = 0.2;
    private static final int FINE_PLACES = 3;

    /** From here on nobody measures with a tape: an altitude is in feet. */
    private static final double FEET_ALONE_FROM_IN = 12 * 100;

    private static final int METRE_PLACES = 2;
    private static final double METRE = 1;
    private static final double HALF_CM = 0.005;
    private static final double HALF_MM = 0.0005;
    private static final double HANDBREADTH_M = 0.1;
    private static final double CM_PER_M = 100;
    private static final double MM_PER_M = 1000;

    private TapeMeasure() {}

    /**
     * Metres, under 1 m centimetres, under 10 cm millimetres.
     *
     * @param metres how long
     * @param finer decimal places more
     */
    static String metric(double metres, int finer) {
        double size = Math.abs(metres);
        // What rounds up to the next unit is written in that.
        if (size >= METRE - HALF_CM) {
            return Numeral.fixed(metres, METRE_PLACES + Math.max(0, finer)) + " m";
        }
        return size >= HANDBREADTH_M - HALF_MM
                ? Numeral.fixed(metres * CM_PER_M, Math.max(0, finer)) + " cm"
                : Numeral.fixed(metres * MM_PER_M, Math.max(0, finer)) + " mm";
    }

    /**
     * The same with every digit, as it may be typed back.
     *
     * @param metres how long
     */
    public static String typed(BigDecimal metres) {
        BigDecimal size = metres.abs();
        if (size.signum() == 0 || size.compareTo(BigDecimal.ONE) >= 0) {
            return Numeral.withUnit(metres.toPlainString(), "m");
        }
        boolean small = size.compareTo(BigDecimal.valueOf(HANDBREADTH_M)) < 0;
        BigDecimal moved = metres.movePointRight(small ? 3 : 2).stripTrailingZeros();
        return Numeral.withUnit(moved.toPlainString(), small ? "mm" : "cm");
    }

    /**
     * Feet and inches to a quarter inch; a length below a foot in inches alone.
     *
     * @param inches how long
     * @param finer above 0 to a sixteenth, below 0 to a whole inch, as a rule of thumb is said
     */
    static String feet(double inches, int finer) {
        if (Math.abs(inches) >= FEET_ALONE_FROM_IN) {
            return UsUnit.decimals(inches / INCHES_IN_FOOT, 0) + " ft";
        }
        int of = finer > 0 ? SIXTEENTHS : finer < 0 ? 1 : QUARTERS;
        long parts = Math.round(Math.abs(inches) * of);
        String sign = inches < 0 && parts > 0 ? "−" : "";
        long feet = parts / ((long) of * INCHES_IN_FOOT);
        long rest = parts % ((long) of * INCHES_IN_FOOT);
        String rests = fraction(rest, of) + " in";
        if (feet == 0) {
            return sign + rests;
        }
        return sign + feet + " ft" + (rest == 0 ? "" : " " + rests);
    }

    /**
     * Inches to a sixteenth where that is fine enough, as a decimal below.
     *
     * @param inches how long
     * @param finer decimal places that somebody wants beyond a tape's, as of a bore; 0 for none, -1 for a sixteenth however small it is, below
     *     that for a thirty-second, as glass is sold
     */
    static String inches(double inches, int finer) {
        double size = Math.abs(inches);
        if (size == 0) {
            return "0 in";
        }
        if (finer > 0 || (finer == 0 && size < DECIMAL_BELOW_IN)) {
            return Numeral.fixed(inches, size < FINE_BELOW_IN ? FINE_PLACES : 1 + Math.max(1, finer)) + " in";
        }
        int of = finer < -1 ? THIRTY_SECONDS : SIXTEENTHS;
        return (inches < 0 ? "−" : "") + fraction(Math.round(size * of), of) + " in";
    }

    /** Whole and rest, the rest in its lowest terms: 31-15/16, 5-1/2, 3. */
    private static String fraction(long parts, int of) {
        long whole = parts / of;
        long rest = parts % of;
        int below = of;
        while (rest != 0 && rest % 2 == 0) {
            rest /= 2;
            below /= 2;
        }
        if (rest == 0) {
            return Long.toString(whole);
        }
        String part = rest + "/" + below;
        return whole == 0 ? part : whole + "-" + part;
    }
}
