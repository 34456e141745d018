package loftcoil.runner.check;

import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;

/** Says what an answer is worth. Right always wins over a known mistake. */
public final class Checker {

    private Checker() {}

    /**
     * The verdict on an answer. A prediction is noted, not judged.
     *
     * @param exercise with the learner's own numbers in it
     * @param answer as typed: a number and unit, the text of a choice or its number from 1, Java, or the changes of a faulty system
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static Verdict check(Exercise exercise, String answer, Reckoning reckoning) {
        return verdict(exercise, answer, reckoning, !exercise.before());
    }

    /**
     * The verdict on a prediction once the numbers are known.
     *
     * @param exercise with the learner's own numbers in it
     * @param answer as typed
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static Verdict compare(Exercise exercise, String answer, Reckoning reckoning) {
        return verdict(exercise, answer, reckoning, true);
    }

    private static Verdict verdict(Exercise exercise, String answer, Reckoning reckoning, boolean judged) {
        if (exercise instanceof Quantity quantity) {
            return new QuantityCheck(quantity, reckoning).verdict(answer, judged);
        } else if (exercise instanceof Choice choice) {
            return ChoiceCheck.verdict(choice, answer, judged);
        } else if (exercise instanceof Code code) {
            return CodeCheck.verdict(code, answer, reckoning);
        } else if (exercise instanceof Decision decision) {
            return DecisionCheck.verdict(decision, answer);
        }
        if (exercise instanceof Mend mend) {
            return new MendCheck(mend, reckoning).verdict(answer);
        }
        throw new IllegalArgumentException("exercise of an unknown kind: " + exercise.path());
    }
}
