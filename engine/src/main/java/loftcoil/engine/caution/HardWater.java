package loftcoil.engine.caution;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Lime in the coil: it slows the loop year by year, and a coil that has grown shut over a fire bursts. */
final class HardWater implements CautionRule {

    /** A coil that keeps half its bore for so many years is looked at often enough; common practice, no source. */
    static final double LEAST_YEARS = 15;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated() || facts.design().use().isEmpty()) {
            return;
        }
        Limescale.of(facts.design())
                .ifPresentOrElse(scale -> judge(scale, facts, findings), () -> findings.ask("site.hardnessMgPerL"));
    }

    private static void judge(Limescale scale, CautionFacts facts, Findings findings) {
        if (scale.yearsToHalfBore() < LEAST_YEARS) {
            findings.caution(
                    CautionKind.SCALE,
                    "hardness",
                    new Measure(facts.design().site().hardnessMgPerL().orElseThrow(), MeasureKind.COUNT),
                    "lime",
                    new Measure(scale.kgPerYear(), MeasureKind.MASS_KG),
                    "years",
                    new Measure(scale.yearsToHalfBore(), MeasureKind.NONE));
        }
    }
}
