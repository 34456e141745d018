package loftcoil.engine.caution;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;

/** Water that may freeze where people live in the house: ice bursts pipes, and an ice plug seals a loop under the next fire. */
final class Frost implements CautionRule {

    /** Surroundings below this count as frost: a draught is colder than the room; common practice, no source. */
    static final double FROST_C = 3;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        loop(facts.design(), findings);
        tank(facts, findings);
        if (facts.safety().antifreeze().orElse(false)) {
            findings.caution(
                    "LC-ANTIFREEZE",
                    "Antifreeze is to be put into the water. All %.0f L of it run from the taps: it poisons whoever drinks"
                            + " or cooks with it.",
                    facts.design().tank().volumeL());
        }
    }

    private static void loop(Design design, Findings findings) {
        double roomC = design.site().roomC();
        List<Leg> cold = Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .filter(leg -> fireOutC(leg, roomC) < FROST_C)
                .toList();
        for (Leg leg : cold) {
            findings.caution(
                    "LC-FROST-LOOP",
                    "With the fire out it is %.0f °C around '%s'. An ice plug there bursts the pipe, or seals the loop and"
                            + " makes a boiler of it when the fire is lit.",
                    fireOutC(leg, roomC),
                    leg.name());
        }
    }

    private static double fireOutC(Leg leg, double roomC) {
        return leg.aroundFireOutC().orElse(Math.min(leg.aroundC(), roomC));
    }

    private static void tank(CautionFacts facts, Findings findings) {
        double aroundC = facts.design().tank().aroundC();
        double coldestC = facts.year().map(YearFacts::coldestTankC).orElse(Double.POSITIVE_INFINITY);
        if (aroundC < FROST_C) {
            findings.caution(
                    "LC-FROST-TANK",
                    "It is %.0f °C around the tank: without fire and sun its ports and taps freeze.",
                    aroundC);
        } else if (coldestC < FROST_C) {
            double airC = facts.year().map(YearFacts::leastAirC).orElse(Double.NaN);
            findings.caution(
                    facts.design().window().isPresent() ? "LC-FROST-WINDOW" : "LC-FROST-TANK",
                    "In the year the water in the tank falls to %.1f °C, with %.0f °C outside: ice bursts it.",
                    coldestC,
                    airC);
        }
    }
}
