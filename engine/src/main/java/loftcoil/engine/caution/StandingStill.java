package loftcoil.engine.caution;

import loftcoil.engine.loop.Still;

/** A lit fire under a loop that does not move. */
final class StandingStill implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        if (facts.tankBelowCoil()) {
            findings.caution(
                    "LC-TANK-LOW",
                    "The coil's outlet is %.2f m above the floor, the tank's return port only %.2f m. Hot water does not"
                            + " go down by itself: what is in the coil boils. The tank must be above the coil.",
                    facts.design().coil().outletM(),
                    facts.design().tank().returnPortLevelM());
        } else if (facts.lit().circulation() instanceof Still still) {
            findings.caution("LC-STILL", "%s", still.words());
        } else {
            facts.harder().stream()
                    .filter(harder -> harder.search().circulation() instanceof Still)
                    .findFirst()
                    .ifPresent(harder -> findings.caution(
                            "LC-STILL",
                            "As computed the water goes round, but not %s: %s",
                            harder.when(),
                            harder.search().words()));
        }
    }
}
