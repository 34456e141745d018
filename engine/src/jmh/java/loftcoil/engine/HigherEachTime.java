package loftcoil.engine;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;

/** Gives the designs of a benchmark out a hair higher each time: of one that was looked at before, much is known already. */
public final class HigherEachTime {

    private static final double HAIR_M = 1e-6;

    private int times;

    /** The same design so little higher that nothing else changes. */
    public Design of(Design design) {
        times++;
        return Changes.apply(
                design, "site.altitudeM", Double.toString(design.site().altitudeM() + times * HAIR_M));
    }
}
