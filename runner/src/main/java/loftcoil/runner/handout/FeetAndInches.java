package loftcoil.runner.handout;

import loftcoil.engine.words.Numeral;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** Lengths as a US tape measure shows them. */
final class FeetAndInches {

    private static final WrittenUnit METRE = UnitText.read("m").orElseThrow();
    private static final WrittenUnit INCH = UnitText.read("in").orElseThrow();
    private static final int INCHES_IN_FOOT = 12;
    /** Levels and runs: to a quarter inch, 6 mm. */
    private static final int QUARTERS = 4;
    /** Cuts: to a sixteenth, 1.6 mm, as a tape is marked. */
    private static final int SIXTEENTHS = 16;
    /** Below this an inch is written as a decimal, as bores and walls are sold. */
    private static final double DECIMAL_BELOW_IN = 1.2;

    private static final double FINE_BELOW_IN = 0.2;

    private FeetAndInches() {}

    /** Feet and inches to a quarter inch; a length below a foot in inches alone. */
    static String longLength(double metres) {
        long quarters = Math.round(Math.abs(inches(metres)) * QUARTERS);
        String sign = metres < 0 && quarters > 0 ? "−" : "";
        long feet = quarters / (QUARTERS * INCHES_IN_FOOT);
        long rest = quarters % (QUARTERS * INCHES_IN_FOOT);
        String inches = fraction(rest, QUARTERS) + " in";
        if (feet == 0) {
            return sign + inches;
        }
        return sign + feet + " ft" + (rest == 0 ? "" : " " + inches);
    }

    /** Inches: to a sixteenth where that is fine enough, as a decimal below. */
    static String smallLength(double millimetres) {
        double inches = inches(millimetres / 1000);
        double size = Math.abs(inches);
        if (size < DECIMAL_BELOW_IN) {
            return (size == 0 ? "0" : Numeral.fixed(inches, size < FINE_BELOW_IN ? 3 : 2)) + " in";
        }
        long sixteenths = Math.round(size * SIXTEENTHS);
        return (inches < 0 ? "−" : "") + fraction(sixteenths, SIXTEENTHS) + " in";
    }

    private static double inches(double metres) {
        return METRE.to(INCH, metres);
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
