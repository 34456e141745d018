package loftcoil.runner.check;

import java.util.Optional;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Reckoned;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;

/** The worked solution, with the reference value where the text has a place for it. */
public final class Worked {

    private static final String ANSWER = "{{answer}}";

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
        return answer.map(words -> text.replace(ANSWER, words)).orElse(text);
    }

    /**
     * The reference value with its unit, to four digits; nothing for a choice or a decision.
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
        return Optional.of(shown(value, reckoned.reference().unit()));
    }

    /** A value with its unit, to four digits. */
    public static String shown(double value, String unit) {
        return Numeral.withUnit(Numeral.shown(value, 4), unit);
    }
}
