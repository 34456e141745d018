package loftcoil.runner.exercise;

/**
 * A value that a typical slip leads to.
 *
 * @param java an expression that gives it, in the reference's unit
 * @param because what the slip is, for the writer and the teacher
 * @param hint what to say to the learner, in CommonMark
 */
public record KnownMistake(String java, String because, String hint) {

    KnownMistake with(Numbers numbers) {
        return new KnownMistake(numbers.before(java), because, numbers.fill(hint));
    }
}
