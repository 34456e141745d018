package loftcoil.runner.exercise;

/**
 * The value an answer is checked against.
 *
 * @param java an expression that gives it
 * @param unit the unit it is in; empty for a plain number
 */
public record Reference(String java, String unit) {

    Reference with(Numbers numbers) {
        return new Reference(numbers.before(java), unit);
    }
}
