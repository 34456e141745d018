package loftcoil.runner.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Reference;
import loftcoil.runner.exercise.Tolerance;
import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.WrittenUnit;

/** Checks a number with a unit. */
final class QuantityCheck {

    private final Quantity quantity;
    private final Reckoning reckoning;
    private final WrittenUnit wanted;

    QuantityCheck(Quantity quantity, Reckoning reckoning) {
        this.quantity = quantity;
        this.reckoning = reckoning;
        this.wanted = Measured.wanted(quantity.reference().unit());
    }

    Verdict verdict(String typed, boolean judged) {
        AnswerText answer = AnswerText.read(AnswerCleanup.withoutDegrees(typed, wanted));
        if (answer instanceof AnswerText.NotRead notRead) {
            return new Verdict.Unreadable(notRead.words() + example());
        }
        Measured measured = Measured.of((AnswerText.Amount) answer, wanted);
        if (measured.unit().fits(wanted)) {
            return inUnit(measured, judged);
        }
        Optional<Reference> other = quantity.also().stream()
                .filter(also -> measured.unit().fits(Measured.wanted(also.unit())))
                .findFirst();
        return other.isPresent() ? inOtherKind(measured, other.get(), judged) : WrongKinds.say(measured.unit(), wanted);
    }

    private Verdict inUnit(Measured measured, boolean judged) {
        Temperature temperature = quantity.temperature();
        double value = measured.in(wanted, temperature);
        if (measured.belowAbsoluteZero(temperature) || !Double.isFinite(value)) {
            return new Verdict.Unreadable("Nothing can measure that much or that little." + example());
        }
        Verdict.Taken taken = measured.taken(wanted, value);
        if (!judged) {
            return new Verdict.Noted(taken);
        }
        double reference = finite(quantity.reference().java());
        if (quantity.tolerance().allows(reference, value)) {
            return new Verdict.Right(offBy(reference, value), taken, "");
        }
        return wrong(reference, value, taken);
    }

    private Verdict inOtherKind(Measured measured, Reference other, boolean judged) {
        WrittenUnit unit = Measured.wanted(other.unit());
        double value = measured.in(unit, Temperature.NONE);
        Verdict.Taken taken = measured.taken(unit, value);
        if (!judged) {
            return new Verdict.Noted(taken);
        }
        double reference = finite(other.java());
        // An absolute tolerance is in the first reference's unit, so only its ratio carries over.
        double first = Math.abs(finite(quantity.reference().java()));
        double ratio = first > 0 ? quantity.tolerance().absolute() / first : 0;
        Tolerance tolerance = new Tolerance(0, Math.max(quantity.tolerance().relative(), ratio));
        double offBy = offBy(reference, value);
        return tolerance.allows(reference, value)
                ? new Verdict.Right(offBy, taken, "")
                : new Verdict.Wrong(offBy, taken, "", "");
    }

    private Verdict wrong(double reference, double value, Verdict.Taken taken) {
        double offBy = offBy(reference, value);
        Optional<KnownMistake> known = known(quantity.mistakes(), quantity.tolerance(), value, reckoning);
        if (known.isPresent()) {
            return new Verdict.Wrong(
                    offBy, taken, known.get().hint(), known.get().because());
        }
        return new UnitSlips(quantity, wanted, reference)
                .in(value)
                .map(slip -> new Verdict.Wrong(offBy, taken, slip.hint(), slip.name()))
                .orElseGet(() -> new Verdict.Wrong(offBy, taken, "", ""));
    }

    /** The first mistake whose value is the answer. */
    static Optional<KnownMistake> known(
            List<KnownMistake> mistakes, Tolerance tolerance, double value, Reckoning reckoning) {
        Map<String, Double> values =
                reckoning.together(mistakes.stream().map(KnownMistake::java).toList());
        return mistakes.stream()
                .filter(mistake -> tolerance.allows(number(mistake.java(), values, reckoning), value))
                .findFirst();
    }

    /** A value that was reckoned with others, or else by itself. */
    static double number(String java, Map<String, Double> values, Reckoning reckoning) {
        Double value = values.get(java);
        return value == null ? reckoning.number(java) : value;
    }

    /** How far off, as a signed ratio of the reference; 0 where the reference is 0. */
    static double offBy(double reference, double value) {
        double ratio = (value - reference) / Math.abs(reference);
        return Double.isFinite(ratio) ? ratio : 0;
    }

    private double finite(String java) {
        double value = reckoning.number(java);
        if (!Double.isFinite(value)) {
            throw new ReckoningException("the reference of " + quantity.path() + " is " + value);
        }
        return value;
    }

    private String example() {
        String what = QuantityKind.of(wanted);
        return wanted.shown().isEmpty()
                ? " A plain number is wanted, such as 6.2."
                : " " + Character.toUpperCase(what.charAt(0)) + what.substring(1) + " is wanted, such as "
                        + Numeral.withUnit("6.2", wanted.shown()) + ".";
    }
}
