package loftcoil.engine.clear;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Design;

/**
 * What would clear the dangers of a design.
 *
 * @param design the design as it stands
 * @param dangers one entry for each kind of danger that its verdict has, in the order of the verdict
 * @param complete whether the search went to its end; where it was stopped, what was found until then stands
 * @param wholeVerdicts how many whole verdicts it took, the design's own not counted
 */
public record Clears(Design design, List<Cleared> dangers, boolean complete, int wholeVerdicts) {

    /** Keeps a copy of the entries. */
    public Clears {
        dangers = List.copyOf(dangers);
    }

    /** What was found for a danger; empty where the design does not have it. */
    public Optional<Cleared> of(CautionKind kind) {
        return dangers.stream().filter(cleared -> cleared.kind() == kind).findFirst();
    }
}
