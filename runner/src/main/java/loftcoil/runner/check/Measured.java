package loftcoil.runner.check;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/**
 * A number an answer holds, before and after it is turned into the wanted unit.
 *
 * @param given the number as typed
 * @param step one more in its last digit; 0 where it was not rounded by hand
 * @param unit the unit it is in
 * @param assumed whether nobody said that unit
 * @param sum what it was typed as where that was a sum, one in so many, or several units, which then stand in it too; else empty
 */
record Measured(double given, double step, WrittenUnit unit, boolean assumed, String sum) {

    /** So that a half, which binary numbers miss by a hair, rounds to either side. */
    private static final double ROUNDING = 1e-9;

    private static final double ABSOLUTE_ZERO_C = -Constants.KELVIN_AT_ZERO_C;

    static Measured of(AnswerText.Amount amount, WrittenUnit wanted) {
        return new Measured(
                amount.value(),
                amount.step(),
                amount.unit().orElse(wanted),
                amount.unit().isEmpty(),
                amount.sum());
    }

    /** Seventy drops, where drops a minute are asked for: what is counted is said, only not in what time. */
    Measured counting(WrittenUnit wanted) {
        boolean counted = !unit.shown().isEmpty() && wanted.shown().startsWith(unit.shown() + "/");
        return counted && QuantityKind.is(unit, "") ? new Measured(given, step, wanted, true, sum) : this;
    }

    /** The unit an exercise names; the reader of exercises has seen to it that it is one. */
    static WrittenUnit wanted(String unit) {
        return UnitText.read(unit).orElseThrow(() -> new IllegalArgumentException("unit " + unit));
    }

    /** The number in the wanted unit. */
    double in(WrittenUnit wanted, Temperature temperature) {
        // Without a detour where the unit is the same: a conversion may cost the last digit.
        if (unit.equals(wanted)) {
            return given;
        }
        return temperature == Temperature.DIFFERENCE ? unit.stepTo(wanted, given) : unit.to(wanted, given);
    }

    /**
     * True where that value, written in the unit of the answer and rounded to its digits, is the answer.
     *
     * @param value in the wanted unit
     */
    boolean rounds(double value, WrittenUnit wanted, Temperature temperature) {
        return Math.abs(asTyped(value, wanted, temperature) - given) <= step / 2 * (1 + ROUNDING);
    }

    /** A value in the wanted unit as the answer would have it. */
    double asTyped(double value, WrittenUnit wanted, Temperature temperature) {
        if (unit.equals(wanted)) {
            return value;
        }
        return temperature == Temperature.DIFFERENCE ? wanted.stepTo(unit, value) : wanted.to(unit, value);
    }

    /** True for a level of temperature that nothing can have. */
    boolean belowAbsoluteZero(Temperature temperature) {
        return temperature == Temperature.LEVEL && !(unit.to(wanted("°C"), given) >= ABSOLUTE_ZERO_C - 1e-6);
    }

    /** Feet and inches, hours and minutes: given back as they were typed, and not as so many thousandths of a foot. */
    private boolean severalUnits() {
        return !sum.isEmpty() && !Character.isDigit(sum.charAt(sum.length() - 1));
    }

    Verdict.Taken taken(WrittenUnit wanted, double value) {
        String words =
                severalUnits() ? sum : Numeral.withUnit(sum.isEmpty() ? Numeral.shown(given, 6) : sum, unit.shown());
        if (!unit.equals(wanted)) {
            words += ", which is " + Numeral.withUnit(Numeral.shown(value, 4), wanted.shown());
        }
        return Verdict.Taken.number(words, value, assumed && !wanted.shown().isEmpty());
    }
}
