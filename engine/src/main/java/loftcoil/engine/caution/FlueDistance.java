package loftcoil.engine.caution;

import loftcoil.engine.design.Flue;
import loftcoil.engine.words.Measure;

/** Distances of heater and flue from what burns, and the height of the flue. Plates and local code go before these figures. */
final class FlueDistance implements CautionRule {

    /** Top of the flue above the roof where it leaves it, m: 3 ft, NFPA 211, as restated in public. */
    static final double ABOVE_ROOF_M = 0.914;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        facts.safety().flue().ifPresentOrElse(flue -> judge(flue, findings), () -> findings.ask("safety.flue"));
    }

    private static void judge(Flue flue, Findings findings) {
        double flueNeedsMm = flue.flueAtLeastMm();
        if (flue.flueToCombustibleMm() < flueNeedsMm) {
            findings.caution(
                    CautionKind.FLUE_NEAR,
                    "away",
                    Measure.millimetres(flue.flueToCombustibleMm()),
                    "least",
                    Measure.millimetres(flueNeedsMm));
        }
        double heaterNeedsMm = flue.heaterAtLeastMm();
        if (flue.heaterToCombustibleMm() < heaterNeedsMm) {
            findings.caution(
                    CautionKind.HEATER_NEAR,
                    "away",
                    Measure.millimetres(flue.heaterToCombustibleMm()),
                    "least",
                    Measure.millimetres(heaterNeedsMm));
        }
        if (flue.topAboveRoofM() < ABOVE_ROOF_M) {
            findings.caution(
                    CautionKind.FLUE_LOW,
                    "above",
                    Measure.metres(flue.topAboveRoofM()),
                    "least",
                    Measure.metres(ABOVE_ROOF_M));
        }
    }
}
