package loftcoil.runner.check;

import java.util.Optional;
import java.util.regex.Pattern;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.unit.WrittenUnit;

/** Checks a few lines of Java by their last value. */
final class CodeCheck {

    private static final Pattern NUMBER_ALONE = Pattern.compile("-?[\\d.eE+-]+[dDfFL]?\\s*;?");

    private CodeCheck() {}

    static Verdict verdict(Code code, String java, Reckoning reckoning) {
        if (java.isBlank()) {
            return new Verdict.Unreadable("Write some Java; its last line should be the value.");
        }
        if (NUMBER_ALONE.matcher(java.replaceAll("//.*", "").strip()).matches()) {
            return new Verdict.Unreadable(
                    "That is a number alone. Write the Java that works it out; its last line should be the value.");
        }
        double value;
        try {
            value = reckoning.number(java);
        } catch (ReckoningException e) {
            return new Verdict.Unreadable(
                    "That Java gives no number. " + (e.getMessage() == null ? "" : e.getMessage()));
        }
        if (!Double.isFinite(value)) {
            return new Verdict.Unreadable("The last value is " + value + ". Look for a division by zero or a root of a"
                    + " negative number.");
        }
        double reference = reckoning.number(code.reference().java());
        double offBy = QuantityCheck.offBy(reference, value);
        WrittenUnit unit = Measured.wanted(code.reference().unit());
        String words = Numeral.withUnit(Numeral.shown(value, 6), unit.shown());
        Verdict.Taken taken = Verdict.Taken.number(words, value, false);
        if (code.tolerance().allows(reference, value)) {
            return new Verdict.Right(offBy, taken, "");
        }
        Optional<KnownIdeas.Idea> known = KnownIdeas.of(code.mistakes(), code.tolerance(), reference, reckoning)
                .shown(value, idea -> idea == value);
        return new Verdict.Wrong(
                offBy,
                taken,
                known.map(KnownIdeas.Idea::hint).orElse(code.about().solution().first()),
                known.map(KnownIdeas.Idea::name).orElse(""));
    }
}
