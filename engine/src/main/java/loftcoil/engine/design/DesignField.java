package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.words.MeasureKind;

/**
 * What there is to know of one field of a design.
 *
 * @param path where it stands, {@code []} for each item of a list and {@code *} for any key, as in {@code coldLegs[].fittings.*}
 * @param label what it is called
 * @param help one line on what is wanted there
 * @param unit its unit; empty for a plain number or text
 * @param kind the measure it is shown as
 * @param inKind what one of its unit is in the unit of that measure: 1000 where kW are shown as W
 * @param range allowed numbers; empty for text
 * @param options what can be chosen; empty where anything in the range, or any text, may stand
 * @param allowed what is allowed, in words
 * @param leftOut what is taken where it is left out; empty where it must be there
 * @param assumed the number taken where it is left out, and its range; empty where leaving out is no number
 */
public record DesignField(
        String path,
        String label,
        String help,
        String unit,
        MeasureKind kind,
        double inKind,
        Optional<Allowed> range,
        List<String> options,
        String allowed,
        Optional<String> leftOut,
        Optional<Assumed> assumed) {

    /** Keeps a copy of the options. */
    public DesignField {
        options = List.copyOf(options);
    }

    /**
     * A number that stands in for one that nobody gave.
     *
     * @param low least that it may be in truth; a verdict takes this end or the other, whichever is the more dangerous
     * @param usual what figures take
     * @param high most that it may be in truth
     */
    public record Assumed(double low, double usual, double high) {}
}
