package loftcoil.runner.lesson;

/**
 * A value the learner drags; the snippet beneath runs again with it.
 *
 * @param variable Java name of the {@code double} the snippet reads
 * @param from least value
 * @param to greatest value
 * @param by step between two stops, above zero
 * @param start value it starts at
 * @param decided name of the design change whose value in the learner's own design it starts at instead; empty where none
 * @param unit unit of all values, as shown
 * @param label what it is called on the page
 */
public record Drag(
        String variable, double from, double to, double by, double start, String decided, String unit, String label) {

    /** The same, starting at the stop nearest to that value. */
    public Drag startingAt(double value) {
        double stops = Math.rint((Math.max(from, Math.min(to, value)) - from) / by);
        return new Drag(variable, from, to, by, from + stops * by, decided, unit, label);
    }
}
