package loftcoil.runner.lesson;

/**
 * A value the learner drags; the snippet beneath runs again with it.
 *
 * @param variable Java name of the {@code double} the snippet reads
 * @param from least value
 * @param to greatest value
 * @param by step between two stops, above zero
 * @param start value it starts at
 * @param unit unit of all four, as shown
 * @param label what it is called on the page
 */
public record Drag(String variable, double from, double to, double by, double start, String unit, String label) {}
