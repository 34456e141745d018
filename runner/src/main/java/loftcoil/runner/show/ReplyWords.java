package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.check.Verdict;
import loftcoil.runner.check.Worked;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.Tries;

/** What is said to an answer. */
final class ReplyWords {

    private final Reckoning reckoning;
    private final Supplier<Units> units;

    ReplyWords(Reckoning reckoning, Supplier<Units> units) {
        this.reckoning = reckoning;
        this.units = units;
    }

    /** The state an answer is kept under. */
    static AnswerState state(Verdict verdict) {
        if (verdict instanceof Verdict.Right) {
            return AnswerState.RIGHT;
        }
        if (verdict instanceof Verdict.Wrong) {
            return AnswerState.WRONG;
        }
        return verdict instanceof Verdict.Noted ? AnswerState.NOTED : AnswerState.UNREAD;
    }

    /** The short name of the known mistake; empty where none was seen. */
    static String mistake(Verdict verdict) {
        return verdict instanceof Verdict.Wrong wrong ? wrong.mistake() : "";
    }

    /**
     * The reply to an answer that was just given.
     *
     * @param exercise with the learner's own numbers
     * @param verdict what it is worth
     * @param answers all answers to this question so far, this one last
     */
    View.Reply now(Exercise exercise, Verdict verdict, List<Progress.Given> answers) {
        String typed = answers.get(answers.size() - 1).text();
        return reply(exercise, typed, state(verdict), words(exercise, verdict), hint(verdict), answers);
    }

    /** The answer to be kept, with what is said to it. */
    Progress.Given given(Exercise exercise, Verdict verdict, String typed) {
        return new Progress.Given(typed, state(verdict), mistake(verdict), words(exercise, verdict), hint(verdict));
    }

    private static String hint(Verdict verdict) {
        if (verdict instanceof Verdict.Wrong wrong) {
            return wrong.hint();
        }
        return verdict instanceof Verdict.Right right ? right.say() : "";
    }

    /** The reply to the last answer of an earlier day; empty where there is none. */
    Optional<View.Reply> before(Exercise exercise, List<Progress.Given> answers) {
        if (answers.isEmpty()) {
            return Optional.empty();
        }
        Progress.Given last = answers.get(answers.size() - 1);
        if (!last.words().isEmpty()) {
            return Optional.of(reply(exercise, last.text(), last.state(), last.words(), last.hint(), answers));
        }
        String words =
                switch (last.state()) {
                    case RIGHT -> "Right.";
                    case WRONG -> "Not yet.";
                    case NOTED -> "Your guess is noted.";
                    case DECIDED -> "Decided.";
                    case UNREAD, FORGOTTEN ->
                        "That was not judged: it could not be read, or a digit or a unit was missing.";
                };
        return Optional.of(reply(exercise, last.text(), last.state(), words, "", answers));
    }

    private View.Reply reply(
            Exercise exercise,
            String typed,
            AnswerState state,
            String words,
            String hint,
            List<Progress.Given> answers) {
        Tries tries = Tries.of(answers);
        String worked = tries.solutionDue() ? Worked.markdown(exercise, reckoning) : "";
        String source = tries.solutionDue() ? exercise.about().source() : "";
        return new View.Reply(
                typed, state, words, hint, new View.Counted(tries.wrong(), tries.leftBeforeSolution()), worked, source);
    }

    private static boolean isCause(Mend mend, Verdict.Taken taken) {
        return mend.causes().stream().anyMatch(cause -> cause.text().equals(taken.words()));
    }

    /** What is said first. */
    String words(Exercise exercise, Verdict verdict) {
        if (exercise instanceof Mend mend && verdict instanceof Verdict.Right right) {
            return isCause(mend, right.taken()) ? "You have found it." : "It works.";
        }
        if (exercise instanceof Mend mend && verdict instanceof Verdict.Wrong wrong) {
            return isCause(mend, wrong.taken()) ? "Not yet." : "It does not do what it should yet.";
        }
        if (verdict instanceof Verdict.Right right) {
            return "Right"
                    + comesTo(exercise).map(value -> ": it comes to " + value).orElse("")
                    + Worked.byHand(exercise, reckoning)
                            .map(sum -> "; by hand to " + sum)
                            .orElse("")
                    + yours(exercise, right.taken())
                    + "."
                    + assumed(right.taken());
        }
        if (verdict instanceof Verdict.Wrong wrong) {
            return exercise instanceof Choice
                    ? "Not that one."
                    : "Not yet: " + off(exercise, wrong) + "." + assumed(wrong.taken());
        }
        if (verdict instanceof Verdict.WrongKind kind) {
            return "The answer’s unit does not fit: " + kind.given() + "; wanted is " + kind.wanted() + "."
                    + (kind.help().isEmpty() ? "" : " " + kind.help());
        }
        if (verdict instanceof Verdict.Noted noted) {
            return "Noted: " + noted.taken().words() + ". Run on and see.";
        }
        if (verdict instanceof Verdict.More more) {
            return more.words();
        }
        return verdict instanceof Verdict.Unreadable unreadable ? units.get().said(unreadable.words()) : "";
    }

    /** The reference value; with what it is in the units of the reader, where those are not the ones asked for. */
    Optional<String> comesTo(Exercise exercise) {
        return Worked.answer(exercise, reckoning).map(answer -> answer + inUnits(exercise));
    }

    private String inUnits(Exercise exercise) {
        return exercise instanceof Reckoned reckoned
                ? new Shown(units.get())
                        .besides(
                                reckoned,
                                () -> reckoning.number(reckoned.reference().java()))
                        .map(words -> ", which is " + words)
                        .orElse("")
                : "";
    }

    /** What a snippet of one's own came to, where that is near the value and not the same. */
    private String yours(Exercise exercise, Verdict.Taken taken) {
        return exercise instanceof Code
                        && Worked.answer(exercise, reckoning)
                                .filter(value -> !value.equals(taken.words()))
                                .isPresent()
                ? "; yours to " + taken.words()
                : "";
    }

    /** A temperature is off by degrees: a share of 20 °C would say nothing. */
    private String off(Exercise exercise, Verdict.Wrong wrong) {
        OptionalDouble given = wrong.taken().value();
        if (given.isEmpty()
                || !(exercise instanceof Quantity quantity)
                || quantity.temperature() != Quantity.Temperature.LEVEL) {
            return off(wrong.offBy());
        }
        double degrees =
                given.getAsDouble() - reckoning.number(quantity.reference().java());
        MeasureKind apart = MeasureKind.TEMP_DIFF_K;
        return Numeral.shown(units.get().shown(apart, Math.abs(degrees)), 2) + " "
                + units.get().unit(apart) + (degrees > 0 ? " too high" : " too low");
    }

    private static String off(double ratio) {
        if (!Double.isFinite(ratio) || ratio == 0) {
            return "that is not the value";
        }
        if (ratio < -1 + 1e-9) {
            return "the sign or the size is off";
        }
        String way = ratio > 0 ? " too high" : " too low";
        return ratio > 9
                ? Numeral.shown(1 + ratio, 2) + " times the value"
                : Numeral.shown(Math.abs(ratio) * 100, 2) + " %" + way;
    }

    private static String assumed(Verdict.Taken taken) {
        return taken.unitAssumed() ? " Without a unit it was taken as " + taken.words() + "." : "";
    }
}
