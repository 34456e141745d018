package loftcoil.engine.caution;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Measure;

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
                    CautionKind.ANTIFREEZE,
                    "tank",
                    Measure.litres(facts.design().tank().volumeL()));
        }
    }

    private static void loop(Design design, Findings findings) {
        double roomC = design.site().roomC();
        List<Leg> cold = Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .filter(leg -> fireOutC(leg, roomC) < FROST_C)
                .toList();
        for (Leg leg : cold) {
            findings.caution(
                    CautionKind.FROST_LOOP, "around", Measure.celsius(fireOutC(leg, roomC)), "leg", leg.name());
        }
    }

    private static double fireOutC(Leg leg, double roomC) {
        return leg.aroundFireOutC().orElse(Math.min(leg.aroundC(), roomC));
    }

    private static void tank(CautionFacts facts, Findings findings) {
        double aroundC = facts.design().tank().aroundC();
        if (aroundC < FROST_C) {
            findings.cautionAs(CautionKind.FROST_TANK, "around", "around", Measure.celsius(aroundC));
            return;
        }
        CautionKind kind = facts.design().window().isPresent() ? CautionKind.FROST_WINDOW : CautionKind.FROST_TANK;
        facts.year()
                .filter(year -> year.coldestTankC() < FROST_C)
                .ifPresent(year -> findings.cautionAs(
                        kind,
                        "year",
                        "coldest",
                        Measure.celsius(year.coldestTankC()),
                        "air",
                        Measure.celsius(year.leastAirC())));
    }
}
