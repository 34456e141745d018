package loftcoil.engine.clear;

import java.util.List;
import loftcoil.engine.caution.CautionKind;

/**
 * What the search found for one danger.
 *
 * @param kind the danger
 * @param ways what of the build would clear it, the cheapest first; empty where nothing was found
 * @param rarer conduct that keeps it away as long as everybody keeps to it, such as a shorter fire; it clears nothing that is built
 */
public record Cleared(CautionKind kind, List<Way> ways, List<Way> rarer) {

    /** Keeps copies of the lists. */
    public Cleared {
        ways = List.copyOf(ways);
        rarer = List.copyOf(rarer);
    }
}
