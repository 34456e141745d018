package loftcoil.runner.exercise;

/**
 * A fixed case with a value from outside, to check the reference expression itself.
 *
 * @param with the numbers of that case
 * @param value the published value, in the reference's unit
 * @param tolerance how near the reference must come to it
 * @param source where it is published
 */
public record Published(Numbers with, double value, Tolerance tolerance, String source) {}
