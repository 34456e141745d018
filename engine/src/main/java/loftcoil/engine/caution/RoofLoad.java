package loftcoil.engine.caution;

import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.FullWeight;
import loftcoil.engine.words.Measure;

/** What the roof has to carry. */
final class RoofLoad implements CautionRule {

    /** Fewest bearers; common practice, no source. */
    static final int LEAST_BEARERS = 2;

    static FullWeight full(Tank tank) {
        return FullWeight.of(tank.shape(), tank.emptyMassKg());
    }

    @Override
    public void look(CautionFacts facts, Findings findings) {
        double fullKg = full(facts.design().tank()).massKg();
        facts.safety()
                .structure()
                .ifPresentOrElse(
                        structure -> judge(structure, fullKg, findings),
                        () -> findings.ask("safety.structure", "full", Measure.kilograms(fullKg)));
    }

    private static void judge(Structure structure, double fullKg, Findings findings) {
        if (fullKg > structure.loadLimitKg()) {
            findings.caution(
                    CautionKind.ROOF_LOAD,
                    "full",
                    Measure.kilograms(fullKg),
                    "most",
                    Measure.kilograms(structure.loadLimitKg()));
        }
        if (structure.bearers() < LEAST_BEARERS) {
            findings.caution(
                    CautionKind.ROOF_BEARERS,
                    "full",
                    Measure.kilograms(fullKg),
                    "bearers",
                    Measure.count(structure.bearers()),
                    "least",
                    Measure.count(LEAST_BEARERS));
        }
    }
}
