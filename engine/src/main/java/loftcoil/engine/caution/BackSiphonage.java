package loftcoil.engine.caution;

import java.util.Optional;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Origin;
import loftcoil.engine.words.Measure;

/** Tank water sucked back into water that somebody drinks. */
final class BackSiphonage implements CautionRule {

    private static final String DRINKING = "safety.coldFeed.drinkingWater";

    /**
     * Least free fall over the highest water: 20 mm or twice the bore of the inlet, whichever is more. EN 1717; UK Water
     * Supply (Water Fittings) Regulations, type AG air gap (read in the regulators' glossary).
     *
     * @param boreMm bore of the inlet, mm
     */
    static double leastAirGapMm(double boreMm) {
        return Math.max(20, 2 * boreMm);
    }

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Optional<ColdFeed> feed = facts.safety().coldFeed();
        if (feed.isEmpty()) {
            findings.ask("safety.coldFeed");
        } else if (facts.design().origin(DRINKING) == Origin.ASSUMED) {
            findings.ask(DRINKING);
        } else {
            judge(feed.get(), findings);
        }
    }

    private static void judge(ColdFeed feed, Findings findings) {
        if (!feed.drinkingWater()) {
            return;
        }
        double leastMm = leastAirGapMm(feed.boreMm().orElse(0));
        if (feed.airGapMm().isEmpty()) {
            findings.ask("safety.coldFeed.airGapMm");
        } else if (feed.airGapMm().getAsDouble() < leastMm) {
            findings.caution(
                    CautionKind.BACKFLOW,
                    "gap",
                    Measure.millimetres(feed.airGapMm().getAsDouble()),
                    "least",
                    Measure.millimetres(leastMm));
        }
    }
}
