package loftcoil.runner.check;

import java.util.Optional;
import java.util.regex.Matcher;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Numbers;
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

    /** Digits of a sum done by hand. */
    private static final int PENCIL = 3;

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
        Optional<String> sum = sum(exercise, reckoning).map(value -> shown(value, (Reckoned) exercise));
        String summed = sum.map(words -> text.replace(SUM, "= " + words)).orElse(text);
        return steps(answer.map(words -> summed.replace(ANSWER, words)).orElse(summed));
    }

    /** What each step comes to, to four digits, in the place it has in the text. */
    static String steps(String text) {
        return Numbers.SUM.matcher(text).replaceAll(place -> {
            if (SumText.read("(" + place.group(1) + ")").orElse(null) instanceof AnswerText.Amount amount) {
                return Matcher.quoteReplacement(Numeral.shown(amount.value(), 4));
            }
            throw new ReckoningException("{{=" + place.group(1) + "}} cannot be read as a sum");
        });
    }

    /**
     * What the solution's own sum comes to, with its unit; empty where no sum is written out, or where it comes to the reference value in
     * the three digits that a pencil gives.
     *
     * @param exercise with the learner's own numbers in it
     * @param reckoning computes the exercise's Java
     * @throws ReckoningException where the exercise's own Java gives no number
     */
    public static Optional<String> byHand(Exercise exercise, Reckoning reckoning) {
        return sum(exercise, reckoning)
                .filter(value -> !alike(
                        value, value(exercise, ((Reckoned) exercise).reference().java(), reckoning)))
                .map(value -> shown(value, (Reckoned) exercise));
    }

    private static boolean alike(double one, double other) {
        return Numeral.shown(one, PENCIL).equals(Numeral.shown(other, PENCIL));
    }

    private static Optional<Double> sum(Exercise exercise, Reckoning reckoning) {
        return sumJava(exercise).map(java -> value(exercise, java, reckoning));
    }

    /** The Java of the sum that the solution writes out; empty where it writes none. */
    public static Optional<String> sumJava(Exercise exercise) {
        About.Solution solution = exercise.about().solution();
        return exercise instanceof Reckoned
                        && solution.text().contains(SUM)
                        && !solution.java().isEmpty()
                ? Optional.of(solution.java())
                : Optional.empty();
    }

    private static double value(Exercise exercise, String java, Reckoning reckoning) {
        double value = reckoning.number(java);
        if (!Double.isFinite(value)) {
            throw new ReckoningException(exercise.path() + " comes to " + value);
        }
        return value;
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
        return Optional.of(shown(value(exercise, reckoned.reference().java(), reckoning), reckoned));
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
