package loftcoil.runner.lesson;

import java.util.function.Function;

/**
 * A value the learner drags; the snippet beneath runs again with it.
 *
 * @param variable Java name of the {@code double} the snippet reads
 * @param from least value
 * @param to greatest value
 * @param by step between two stops, above zero
 * @param start value it starts at
 * @param decided name of the design change whose value in the learner's own design it starts at instead; empty where none
 * @param within path of the field of the learner's own design beyond which a value means nothing; empty where none
 * @param unit unit of all values, as shown
 * @param label what it is called on the page
 */
public record Drag(
        String variable,
        double from,
        double to,
        double by,
        double start,
        String decided,
        String within,
        String unit,
        String label) {

    /**
     * The same in somebody's own design: it starts where the design stands, and ends where values begin to mean nothing there.
     *
     * @param current value of a field or change of the design, by its path
     */
    public Drag own(Function<String, String> current) {
        Drag ended = within.isEmpty() ? this : endingAt(Double.parseDouble(current.apply(within)));
        return decided.isEmpty() ? ended : ended.startingAt(Double.parseDouble(current.apply(decided)));
    }

    /** The same, ending at the last stop that is not above that value; with one stop beside the first at least. */
    private Drag endingAt(double most) {
        double stops = Math.max(1, Math.floor((Math.min(to, most) - from) / by + 1e-9));
        double end = Math.min(to, from + stops * by);
        return new Drag(variable, from, end, by, Math.min(start, end), decided, within, unit, label);
    }

    /** The same, starting at that value, whether or not a stop is there. */
    private Drag startingAt(double value) {
        return new Drag(variable, from, to, by, Math.max(from, Math.min(to, value)), decided, within, unit, label);
    }
}
