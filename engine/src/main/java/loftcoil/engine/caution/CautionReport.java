package loftcoil.engine.caution;

import java.util.List;

/**
 * What was found: dangers that follow from what the design says, and questions it leaves open. A design that says everything
 * and has no danger in it gives neither.
 *
 * @param cautions dangers, each a fact
 * @param asks questions
 */
public record CautionReport(List<Caution> cautions, List<Ask> asks) {

    /** Keeps copies of the lists. */
    public CautionReport {
        cautions = List.copyOf(cautions);
        asks = List.copyOf(asks);
    }
}
