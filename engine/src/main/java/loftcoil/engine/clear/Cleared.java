package loftcoil.engine.clear;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.words.MeasuredText;

/**
 * What the search found for one danger.
 *
 * @param kind the danger
 * @param ways what of the build would clear it, the cheapest first; empty where nothing was found
 * @param rarer conduct that keeps it away as long as everybody keeps to it, such as a shorter fire; it clears nothing that is built
 * @param because where nothing was found: what is in the way of the most that was tried; otherwise empty
 */
public record Cleared(CautionKind kind, List<Way> ways, List<Way> rarer, Optional<MeasuredText> because) {

    /** Keeps copies of the lists. */
    public Cleared {
        ways = List.copyOf(ways);
        rarer = List.copyOf(rarer);
    }
}
