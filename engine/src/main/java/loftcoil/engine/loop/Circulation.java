package loftcoil.engine.loop;

import java.util.function.Function;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;

/** What the loop does in the forward direction. */
public sealed interface Circulation permits Circulates, Boils, Still {

    /** The finding in one or two plain sentences, levels and figures included. */
    MeasuredText finding();

    /** The finding in metric units. */
    default String words() {
        return words(Units.METRIC);
    }

    /** The finding in those units. */
    default String words(Units units) {
        return units.words(finding());
    }

    /** Whether a stable forward flow exists in which nothing boils. */
    default boolean circulates() {
        return this instanceof Circulates;
    }

    /**
     * Handles each case; a new case cannot be forgotten.
     *
     * @param circulates what to do with a flow
     * @param boils what to do with a loop that boils
     * @param still what to do with a loop that stands still
     */
    default <T> T match(
            Function<? super Circulates, ? extends T> circulates,
            Function<? super Boils, ? extends T> boils,
            Function<? super Still, ? extends T> still) {
        if (this instanceof Circulates c) {
            return circulates.apply(c);
        }
        if (this instanceof Boils b) {
            return boils.apply(b);
        }
        return still.apply((Still) this);
    }
}
