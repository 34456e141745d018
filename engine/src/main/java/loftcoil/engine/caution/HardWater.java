package loftcoil.engine.caution;

import java.util.Optional;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

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
        Optional<FurredCoil> furred = FurredCoil.of(facts.design(), scale);
        if (furred.isEmpty() && !(scale.yearsToHalfBore() < LEAST_YEARS)) {
            return;
        }
        MeasuredText lime = CautionKind.SCALE.part(
                "lime",
                "hardness",
                new Measure(facts.design().site().hardnessMgPerL().orElseThrow(), MeasureKind.COUNT),
                "lime",
                new Measure(scale.kgPerYear(), MeasureKind.MASS_KG),
                "years",
                new Measure(scale.yearsToHalfBore(), MeasureKind.NONE));
        MeasuredText remedy = CautionKind.SCALE.part("remedy");
        furred.ifPresentOrElse(
                coil -> furred(coil, lime, remedy, findings),
                () -> findings.cautionAs(CautionKind.SCALE, "narrows", "lime", lime, "remedy", remedy));
    }

    private static void furred(FurredCoil coil, MeasuredText lime, MeasuredText remedy, Findings findings) {
        Measure stops = Measure.count(coil.years());
        coil.state()
                .ifPresentOrElse(
                        state -> findings.cautionAs(
                                CautionKind.SCALE,
                                "stops",
                                "lime",
                                lime,
                                "stops",
                                stops,
                                "when",
                                state.when(),
                                "finding",
                                state.search().circulation().finding(),
                                "remedy",
                                remedy),
                        () -> findings.cautionAs(
                                CautionKind.SCALE, "shuts", "lime", lime, "stops", stops, "remedy", remedy));
    }
}
