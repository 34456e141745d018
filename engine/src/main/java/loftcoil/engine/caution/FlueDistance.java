package loftcoil.engine.caution;

import loftcoil.engine.design.Flue;

/** Distances of heater and flue from what burns, and the height of the flue. Plates and local code go before these figures. */
final class FlueDistance implements CautionRule {

    /** Single-wall flue pipe to anything that burns, mm: 18 in, NFPA 211, as restated in public. */
    static final double FLUE_MM = 457;

    /** Heater without a plate to anything that burns, mm: 36 in, NFPA 211, as restated in public. */
    static final double HEATER_MM = 914;

    /** Top of the flue above the roof where it leaves it, m: 3 ft, NFPA 211, as restated in public. */
    static final double ABOVE_ROOF_M = 0.914;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        facts.safety()
                .flue()
                .ifPresentOrElse(
                        flue -> judge(flue, findings),
                        () -> findings.ask(
                                "safety.flue",
                                "How far are heater and flue from anything that burns, and how high does the flue end? Wood kept too warm for"
                                        + " years takes fire."));
    }

    private static void judge(Flue flue, Findings findings) {
        double flueNeedsMm = flue.flueNeedsMm().orElse(FLUE_MM);
        if (flue.flueToCombustibleMm() < flueNeedsMm) {
            findings.caution(
                    "LC-FLUE-NEAR",
                    "The flue is %.0f mm from something that burns; it should be %.0f mm, unless its plate says less.",
                    flue.flueToCombustibleMm(),
                    flueNeedsMm);
        }
        double heaterNeedsMm = flue.heaterNeedsMm().orElse(HEATER_MM);
        if (flue.heaterToCombustibleMm() < heaterNeedsMm) {
            findings.caution(
                    "LC-HEATER-NEAR",
                    "The heater is %.0f mm from something that burns; it should be %.0f mm, unless its plate says less.",
                    flue.heaterToCombustibleMm(),
                    heaterNeedsMm);
        }
        if (flue.topAboveRoofM() < ABOVE_ROOF_M) {
            findings.caution(
                    "LC-FLUE-LOW",
                    "The flue ends %.2f m above the roof; it should be %.2f m, and 0.6 m above anything within 3 m of it, or"
                            + " wind presses smoke back into the room and sparks reach the roof.",
                    flue.topAboveRoofM(),
                    ABOVE_ROOF_M);
        }
    }
}
