package loftcoil.engine.clear;

import java.util.Comparator;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.words.MeasuredText;

/**
 * One way to be rid of a danger. The whole verdict of the design with it has the danger no more, and no other danger or caution that
 * was not there before.
 *
 * @param changes what is to be changed, at least one: each the path of a field or a named change, with its value
 * @param words the same in words, such as {@code a tank 60 L larger}
 * @param cost relative cost by the table of levers; common practice, no source
 */
public record Way(List<NamedValue> changes, MeasuredText words, double cost) {

    /** The cheapest first; of those alike the one that needs less, then by name, so that the order is always the same. */
    static final Comparator<Way> CHEAPEST_FIRST = Comparator.comparingDouble(Way::cost)
            .thenComparing(way -> way.changes().size())
            .thenComparing(way -> way.changes().toString());

    /** Keeps a copy of the changes. */
    public Way {
        changes = List.copyOf(changes);
    }

    /** Whether it is one change alone. */
    public boolean single() {
        return changes.size() == 1;
    }

    /**
     * The design with it.
     *
     * @throws loftcoil.engine.fault.RefusedException where that is another design than the one it was found for and cannot take it
     */
    public Design appliedTo(Design design) {
        return Rebuild.applied(design, changes);
    }
}
