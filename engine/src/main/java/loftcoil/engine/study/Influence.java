package loftcoil.engine.study;

/**
 * How strongly one doubt moves a figure: Spearman's rank correlation over all loops that circulate, −1 to 1.
 *
 * @param doubt what is not surely known
 * @param onFlow with the flow
 * @param onBoilMargin with the distance from boiling
 */
public record Influence(String doubt, double onFlow, double onBoilMargin) {}
