package loftcoil.runner.check;

import java.util.Optional;
import java.util.function.DoublePredicate;
import loftcoil.engine.words.Numeral;
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

    /** How far rounding to few digits may lead, as a ratio of the value. */
    private static final double MOST_ROUNDING = 0.1;

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
        Measured measured = Measured.of((AnswerText.Amount) answer, wanted).counting(wanted);
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
        return judged(measured, value, reference, taken);
    }

    private Verdict judged(Measured measured, double value, double reference, Verdict.Taken taken) {
        double offBy = offBy(reference, value);
        if (quantity.tolerance().allows(reference, value)) {
            return new Verdict.Right(offBy, taken, onUnsafeSide(value, reference) ? wrongWay() : "");
        }
        DoublePredicate rounds = other -> measured.rounds(other, wanted, quantity.temperature());
        if (safelyRounded(measured, value, reference)) {
            return new Verdict.Right(offBy, taken, "Rounded to the safe side.");
        }
        KnownIdeas known = KnownIdeas.of(quantity.mistakes(), quantity.tolerance(), reference, reckoning);
        if (rounds.test(reference) || byHand(measured, rounds)) {
            if (onUnsafeSide(value, reference)) {
                return new Verdict.Wrong(offBy, taken, wrongWay(), "rounded to the unsafe side");
            }
            return rounded(offBy, taken, known.anyRounds(rounds));
        }
        if (measured.assumed()) {
            Optional<WrittenUnit> meant = UnitsMeant.likely(measured, wanted, reference, quantity.temperature());
            if (meant.isPresent()) {
                return new Verdict.More(taken, askUnit(measured, meant.get()));
            }
        }
        return wrong(reference, value, taken, known, rounds);
    }

    /** Whether the answer is what the worked solution's own sum comes to, rounded: that sum, too, is right. */
    private boolean byHand(Measured measured, DoublePredicate rounds) {
        return measured.step() > 0
                && Worked.sumJava(quantity)
                        .filter(sum -> rounds.test(finite(sum)))
                        .isPresent();
    }

    /** The right value with few digits: right, unless a usual slip looks the same or hardly a digit is left. */
    private Verdict rounded(double offBy, Verdict.Taken taken, boolean alsoAnIdea) {
        if (alsoAnIdea) {
            return new Verdict.More(
                    taken, "Rounded like that, the right value and a usual slip look the same. Give one digit more.");
        }
        boolean rough = Math.abs(offBy) > MOST_ROUNDING && quantity.temperature() != Temperature.LEVEL;
        return rough
                ? new Verdict.More(taken, "That may be the value, but so are many others. Give one digit more.")
                : new Verdict.Right(offBy, taken, "Near enough, rounded like that.");
    }

    /** Whether the answer is the reference rounded to its safe side, by less than one in the last digit typed. */
    private boolean safelyRounded(Measured measured, double value, double reference) {
        double away = value - reference;
        boolean safe = (quantity.tolerance().safe() == Tolerance.Safe.BELOW && away < 0)
                || (quantity.tolerance().safe() == Tolerance.Safe.ABOVE && away > 0);
        double typed = measured.asTyped(reference, wanted, quantity.temperature());
        return safe
                && Math.abs(measured.given() - typed) < measured.step()
                && Math.abs(offBy(reference, value)) <= MOST_ROUNDING;
    }

    private boolean onUnsafeSide(double value, double reference) {
        double hair = 1e-6 * Math.abs(reference);
        return (quantity.tolerance().safe() == Tolerance.Safe.BELOW && value > reference + hair)
                || (quantity.tolerance().safe() == Tolerance.Safe.ABOVE && value < reference - hair);
    }

    private String wrongWay() {
        return quantity.tolerance().safe() == Tolerance.Safe.BELOW
                ? "This is the most that is allowed: round it down, never up."
                : "This is the least that is needed: round it up, never down.";
    }

    private String askUnit(Measured measured, WrittenUnit meant) {
        String number = Numeral.shown(measured.given(), 6);
        return "No unit stands behind " + number + ". In " + wanted.shown()
                + ", which is asked for, it would not be right. Do you mean " + Numeral.withUnit(number, meant.shown())
                + "? Then write the unit too.";
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
        if (tolerance.allows(reference, value)) {
            return new Verdict.Right(offBy, taken, "");
        }
        return measured.rounds(reference, unit, Temperature.NONE)
                ? rounded(offBy, taken, false)
                : new Verdict.Wrong(offBy, taken, first(), "");
    }

    private Verdict wrong(
            double reference, double value, Verdict.Taken taken, KnownIdeas known, DoublePredicate rounds) {
        double offBy = offBy(reference, value);
        return known.shown(value, rounds)
                .or(() -> UnitSlips.of(quantity, wanted, reference).shown(value, rounds))
                .map(idea -> new Verdict.Wrong(offBy, taken, idea.hint(), idea.name()))
                .orElseGet(() -> new Verdict.Wrong(offBy, taken, safeOrFirst(reference, value), ""));
    }

    /** What is on the safe side is no danger, only not what was asked for. */
    private String safeOrFirst(double reference, double value) {
        Tolerance.Safe safe = quantity.tolerance().safe();
        if (safe == Tolerance.Safe.ABOVE && value > reference) {
            return "More than that is safe, but the least was asked for. " + first();
        }
        return safe == Tolerance.Safe.BELOW && value > 0 && value < reference
                ? "Less than that is safe, but the most was asked for. " + first()
                : first();
    }

    /** What to do first, for whom no usual slip is seen. */
    private String first() {
        return quantity.about().solution().first();
    }

    /** How far off, as a signed ratio of the reference; 0 where the reference is 0. */
    static double offBy(double reference, double value) {
        double ratio = (value - reference) / Math.abs(reference);
        return Double.isFinite(ratio) ? ratio : 0;
    }

    private double finite(String java) {
        double value = reckoning.number(java);
        if (!Double.isFinite(value)) {
            throw new ReckoningException("the value of " + quantity.path() + " is " + value);
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
