package loftcoil.runner.check;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** A number an answer holds, before and after it is turned into the wanted unit. */
record Measured(double given, WrittenUnit unit, boolean assumed) {

    private static final double ABSOLUTE_ZERO_C = -Constants.KELVIN_AT_ZERO_C;

    static Measured of(AnswerText.Amount amount, WrittenUnit wanted) {
        return new Measured(
                amount.value(), amount.unit().orElse(wanted), amount.unit().isEmpty());
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

    /** True for a level of temperature that nothing can have. */
    boolean belowAbsoluteZero(Temperature temperature) {
        return temperature == Temperature.LEVEL && !(unit.to(wanted("°C"), given) >= ABSOLUTE_ZERO_C - 1e-6);
    }

    Verdict.Taken taken(WrittenUnit wanted, double value) {
        String words = Numeral.withUnit(Numeral.shown(given, 6), unit.shown());
        if (!unit.equals(wanted)) {
            words += ", which is " + Numeral.withUnit(Numeral.shown(value, 4), wanted.shown());
        }
        return Verdict.Taken.number(words, value, assumed && !wanted.shown().isEmpty());
    }
}
