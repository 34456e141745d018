package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;

/**
 * A faulty system as the learner has it now.
 *
 * @param levers what can be changed
 * @param picture the loop to scale; empty where nothing can be built like that
 * @param circulates one sentence on the loop; empty where nothing can be built like that
 * @param figures what can be read on it
 * @param refused why nothing can be built like that, a line each; none where it can
 * @param readings what may be read before the cause is named; none where no cause is asked for
 * @param causes what may be the cause; none before two readings are taken
 */
public record MendView(
        List<Lever> levers,
        Optional<View.Picture> picture,
        String circulates,
        List<View.Figure> figures,
        List<String> refused,
        List<Reading> readings,
        List<Cause> causes) {

    /** A system whose cause is not asked for. */
    public MendView(
            List<Lever> levers,
            Optional<View.Picture> picture,
            String circulates,
            List<View.Figure> figures,
            List<String> refused) {
        this(levers, picture, circulates, figures, refused, List.of(), List.of());
    }

    /**
     * Something that can be read.
     *
     * @param number the number it is taken by
     * @param label what it is
     * @param taken whether it was chosen
     * @param value with its unit; empty while it is not taken
     */
    public record Reading(int number, String label, boolean taken, String value) {}

    /**
     * Something that may be the cause.
     *
     * @param number the number it is named by
     * @param text the cause and its reason
     * @param named whether it was chosen
     */
    public record Cause(int number, String text, boolean named) {}

    /** Keeps its own copies. */
    public MendView {
        levers = List.copyOf(levers);
        figures = List.copyOf(figures);
        refused = List.copyOf(refused);
        readings = List.copyOf(readings);
        causes = List.copyOf(causes);
    }

    /**
     * Something that can be changed. A number is sent back in metric units, an option by the name the system has for it.
     *
     * @param change name of the change
     * @param label what it is, in words
     * @param slider where a number is set: the stops it may take, in the units of the reader
     * @param options texts to choose among; none where a number is set
     * @param shownOptions the same as they are shown
     * @param found the value as found
     * @param value the value now
     * @param shownFound the value as found, as it is shown
     * @param shownValue the value now, as it is shown
     */
    public record Lever(
            String change,
            String label,
            Optional<Slider> slider,
            List<String> options,
            List<String> shownOptions,
            String found,
            String value,
            String shownFound,
            String shownValue) {}
}
