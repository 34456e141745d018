package loftcoil.engine.caution;

import java.util.List;

/**
 * What was found: dangers that follow from what the design says, and questions it leaves open. A design that says everything
 * and has no danger in it gives neither.
 *
 * @param cautions dangers, each a fact; however they are handed in, they stand by {@link Caution#GRAVEST_FIRST}
 * @param asks questions
 */
public record CautionReport(List<Caution> cautions, List<Ask> asks) {

    /** Keeps copies of the lists, the cautions in their order. */
    public CautionReport {
        cautions = cautions.stream().sorted(Caution.GRAVEST_FIRST).toList();
        asks = List.copyOf(asks);
    }
}
