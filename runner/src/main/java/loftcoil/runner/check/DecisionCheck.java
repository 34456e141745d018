package loftcoil.runner.check;

import java.util.Optional;
import java.util.OptionalInt;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.WrittenUnit;

/** Reads a decision. Whether the design can take it is for the design to say. */
final class DecisionCheck {

    private DecisionCheck() {}

    static Verdict verdict(Decision decision, String typed) {
        return decision.options().isEmpty() ? amount(decision, typed) : option(decision, typed);
    }

    private static Verdict option(Decision decision, String typed) {
        OptionalInt index = ChoiceCheck.find(decision.options(), typed);
        if (index.isEmpty()) {
            return ChoiceCheck.unreadable(decision.options(), typed);
        }
        String option = decision.options().get(index.getAsInt());
        return new Verdict.Decided(option, Verdict.Taken.text(option));
    }

    private static Verdict hour(String typed) {
        Optional<ClockText> clock = ClockText.read(typed);
        if (clock.isEmpty()) {
            return new Verdict.Unreadable("“" + ChoiceCheck.cut(typed.strip())
                    + "” is no time of day. Write it as 17:30, 5:30 pm or half past five in the"
                    + " afternoon; midnight is 0:00.");
        }
        double value = clock.get().hours();
        return new Verdict.Decided(
                Numeral.typed(value, 12), Verdict.Taken.number(clock.get().words(), value, false));
    }

    private static Verdict amount(Decision decision, String typed) {
        WrittenUnit wanted = Measured.wanted(decision.unit());
        if (decision.clock()) {
            return hour(typed);
        }
        String counted = wanted.shown().isEmpty() ? AnswerCleanup.noneAsNought(typed) : typed;
        AnswerText answer = AnswerText.read(AnswerCleanup.withoutDegrees(counted, wanted));
        if (answer instanceof AnswerText.NotRead notRead) {
            String unit = wanted.shown().isEmpty() ? "." : " such as " + Numeral.withUnit("2.5", wanted.shown()) + ".";
            return new Verdict.Unreadable(notRead.words() + " Wanted is " + QuantityKind.of(wanted) + unit);
        }
        Measured measured = Measured.of((AnswerText.Amount) answer, wanted);
        if (!measured.unit().fits(wanted)) {
            return WrongKinds.say(measured.unit(), wanted);
        }
        if (measured.assumed() && wanted.shown().equals("%") && measured.given() > 0 && measured.given() < 1) {
            String number = Numeral.shown(measured.given(), 6);
            return new Verdict.Unreadable("No unit stands behind " + number + ". Is that " + number + "% or "
                    + Numeral.shown(100 * measured.given(), 6) + "%? Write it with the %.");
        }
        double value = measured.in(wanted, wanted.isTemperature() ? Temperature.LEVEL : Temperature.NONE);
        if (!Double.isFinite(value)) {
            return new Verdict.Unreadable("Nothing can measure that much.");
        }
        // Rounded, so that 8 ft becomes 2.4384 m and not 2.4384000000000001.
        return new Verdict.Decided(Numeral.typed(value, 12), measured.taken(wanted, value));
    }
}
