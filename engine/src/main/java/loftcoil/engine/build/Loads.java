package loftcoil.engine.build;

import java.util.List;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * What it weighs.
 *
 * @param loads weights, one a line
 * @param notes what the figures leave out and who decides
 */
public record Loads(List<Load> loads, List<MeasuredText> notes) {

    /** Keeps copies of the lists. */
    public Loads {
        loads = List.copyOf(loads);
        notes = List.copyOf(notes);
    }

    /**
     * A weight.
     *
     * @param what what weighs
     * @param value mass, force or load on an area
     * @param why how it was reckoned
     */
    public record Load(MeasuredText what, Measure value, MeasuredText why) {}
}
