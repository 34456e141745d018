package loftcoil.engine.caution;

import loftcoil.engine.design.ColdFeed;

/** Tank water sucked back into water that somebody drinks. */
final class BackSiphonage implements CautionRule {

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
        facts.safety()
                .coldFeed()
                .ifPresentOrElse(
                        feed -> judge(feed, findings),
                        () -> findings.ask(
                                "safety.coldFeed",
                                "How is the tank filled up, and does the inlet end in free air? A tank that is not filled runs dry; an inlet"
                                        + " under water can suck tank water into drinking water."));
    }

    private static void judge(ColdFeed feed, Findings findings) {
        if (!feed.drinkingWater()) {
            return;
        }
        double leastMm = leastAirGapMm(feed.boreMm().orElse(0));
        if (feed.airGapMm().isEmpty()) {
            findings.ask(
                    "safety.coldFeed.airGapMm",
                    "How far above the highest water does the inlet end? Too little, and tank water can be sucked into the"
                            + " drinking water.");
        } else if (feed.airGapMm().getAsDouble() < leastMm) {
            findings.caution(
                    "LC-BACKFLOW",
                    "The inlet from the drinking water ends %.0f mm above the highest water; at least %.0f mm of free air"
                            + " are needed. A burst main sucks the tank's water into what people drink.",
                    feed.airGapMm().getAsDouble(),
                    leastMm);
        }
    }
}
