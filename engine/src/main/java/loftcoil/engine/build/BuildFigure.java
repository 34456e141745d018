package loftcoil.engine.build;

import java.util.Optional;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * A figure of the sheet with its doubt.
 *
 * @param label what it is
 * @param value best estimate
 * @param low lower end; empty where the figure follows from the drawing alone
 * @param high upper end; there where low is
 * @param doubt where the doubt comes from and how sure the ends are, or why there is none
 */
public record BuildFigure(
        String label, Measure value, Optional<Measure> low, Optional<Measure> high, MeasuredText doubt) {

    /**
     * Checks that the ends belong together.
     *
     * @throws IllegalArgumentException where one end is missing, the kinds differ or the ends are out of order
     */
    public BuildFigure {
        if (low.isPresent() != high.isPresent()) {
            throw new IllegalArgumentException(label + ": one end only");
        }
        if (low.isPresent()) {
            Measure lower = low.get();
            Measure higher = high.orElseThrow();
            if (lower.kind() != value.kind() || higher.kind() != value.kind() || !(lower.value() <= higher.value())) {
                throw new IllegalArgumentException(label + ": " + lower + " to " + higher);
            }
        }
    }

    /** A figure that follows from the drawing. */
    static BuildFigure sure(String label, Measure value, MeasuredText why) {
        return new BuildFigure(label, value, Optional.empty(), Optional.empty(), why);
    }

    /** A figure with ends, given in any order. */
    static BuildFigure between(String label, Measure value, Measure one, Measure other, MeasuredText doubt) {
        Measure low = one.value() <= other.value() ? one : other;
        Measure high = one.value() <= other.value() ? other : one;
        return new BuildFigure(label, value, Optional.of(low), Optional.of(high), doubt);
    }
}
