package loftcoil.engine.caution;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Tar that settles in a cool flue and burns there one day. */
final class Creosote implements CautionRule {

    /** Flue gas cooler than this leaves tar, °C: 250 °F, leaflet of the Alaska DEC, as restated in public. */
    static final double TAR_BELOW_C = 121;

    /** Wettest wood, percent of its whole mass; England's rules of 2020 for wood on sale, from memory. */
    static final double WETTEST_PCT = 20;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.fire().filter(fire -> fire.flueTopLowC() < TAR_BELOW_C).ifPresent(fire -> tar(fire, findings));
        facts.design()
                .fire()
                .filter(fire -> fire.moisturePct() > WETTEST_PCT)
                .ifPresent(fire -> findings.caution(
                        CautionKind.WET_WOOD,
                        "moisture",
                        new Measure(fire.moisturePct(), MeasureKind.PERCENT),
                        "most",
                        new Measure(WETTEST_PCT, MeasureKind.PERCENT)));
    }

    /** A danger where tar is to be expected, a warning where only what is not known of the fire may bring it. */
    private static void tar(FireFacts fire, Findings findings) {
        Measure tar = Measure.celsius(TAR_BELOW_C);
        Measure low = Measure.celsius(fire.flueTopLowC());
        Measure top = Measure.celsius(fire.flueTopC());
        if (fire.flueTopC() < TAR_BELOW_C) {
            findings.cautionAs(CautionKind.CREOSOTE, "expected", "top", top, "low", low, "tar", tar);
        } else {
            findings.milderAs(CautionKind.CREOSOTE, Severity.WARNING, "may-be", "top", top, "low", low, "tar", tar);
        }
    }
}
