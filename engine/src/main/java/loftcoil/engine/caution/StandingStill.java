package loftcoil.engine.caution;

import loftcoil.engine.loop.Still;
import loftcoil.engine.words.Measure;

/** A lit fire under a loop that does not move. */
final class StandingStill implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        if (facts.tankBelowCoil()) {
            findings.caution(
                    CautionKind.TANK_LOW,
                    "outlet",
                    Measure.metres(facts.design().coil().outletM()),
                    "port",
                    Measure.metres(facts.design().tank().returnPortLevelM()));
        } else if (facts.lit().circulation() instanceof Still still) {
            findings.cautionAs(CautionKind.STILL, "now", "finding", still.finding());
        } else {
            facts.harder().stream()
                    .filter(harder -> harder.search().circulation() instanceof Still)
                    .findFirst()
                    .ifPresent(harder -> findings.cautionAs(
                            CautionKind.STILL,
                            "harder",
                            "when",
                            harder.when(),
                            "finding",
                            harder.search().circulation().finding()));
        }
    }
}
