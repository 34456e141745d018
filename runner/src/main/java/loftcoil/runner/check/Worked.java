package loftcoil.runner.check;

import java.util.Optional;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;

/**
 * The worked solution, with the reference value where the text has a place for it. Where that place is the end of a sum that is written
 * out, the sum's own outcome stands there, so that it can be checked with a pencil: the engine may count what the sum leaves out.
 */
public final class Worked {

    private static final String ANSWER = "{{answer}}";

    /** Where the answer stands as the outcome of a sum that is written out. */
    private static final String SUM = "= " + ANSWER;

    /** A guess that may be so far off is of a thing that is known no better. */
    private static final double ROUGH = 0.08;

    private Worked() {}

    /**
     * The solution in CommonMark; empty where the exercise has none.
     *
     * @param exercise with the learner's own numbers in it
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static String markdown(Exercise exercise, Reckoning reckoning) {
        String text = exercise.about().solution().text();
        Optional<String> answer = text.contains(ANSWER) ? answer(exercise, reckoning) : Optional.empty();
        Optional<String> sum = byHand(exercise, reckoning);
        String summed = sum.map(words -> text.replace(SUM, "= " + words)).orElse(text);
        return answer.map(words -> summed.replace(ANSWER, words)).orElse(summed);
    }

    /**
     * What the solution's own sum comes to, with its unit; empty where no sum is written out, or where it comes to the reference value as
     * shown.
     *
     * @param exercise with the learner's own numbers in it
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static Optional<String> byHand(Exercise exercise, Reckoning reckoning) {
        About.Solution solution = exercise.about().solution();
        if (!(exercise instanceof Reckoned reckoned)
                || !solution.text().contains(SUM)
                || solution.java().isEmpty()) {
            return Optional.empty();
        }
        double value = reckoning.number(solution.java());
        if (!Double.isFinite(value)) {
            throw new ReckoningException("the solution of " + exercise.path() + " is " + value);
        }
        String sum = shown(value, reckoned);
        return answer(exercise, reckoning).filter(sum::equals).isPresent() ? Optional.empty() : Optional.of(sum);
    }

    /**
     * The reference value with its unit, to four digits, to fewer for a guess; nothing for a choice or a decision.
     *
     * @param exercise with the learner's own numbers in it
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static Optional<String> answer(Exercise exercise, Reckoning reckoning) {
        if (!(exercise instanceof Reckoned reckoned)) {
            return Optional.empty();
        }
        double value = reckoning.number(reckoned.reference().java());
        if (!Double.isFinite(value)) {
            throw new ReckoningException("the reference of " + exercise.path() + " is " + value);
        }
        return Optional.of(shown(value, reckoned));
    }

    /** A guess is near or far: more digits than that would say more than its rough rule knows. Whole numbers stay whole. */
    private static String shown(double value, Reckoned reckoned) {
        if (!reckoned.about().before()) {
            return shown(value, reckoned.reference().unit());
        }
        double share =
                Math.max(reckoned.tolerance().relative(), reckoned.tolerance().absolute() / Math.abs(value));
        int digits = share > ROUGH ? 2 : 3;
        int whole = value == 0 ? 1 : (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return Numeral.withUnit(
                Numeral.shown(value, Math.max(digits, whole)),
                reckoned.reference().unit());
    }

    /** A value with its unit, to four digits. */
    public static String shown(double value, String unit) {
        return Numeral.withUnit(Numeral.shown(value, 4), unit);
    }
}
