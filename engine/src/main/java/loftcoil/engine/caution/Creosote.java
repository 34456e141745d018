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
        facts.fire()
                .filter(fire -> fire.flueTopC() < TAR_BELOW_C)
                .ifPresent(fire -> findings.caution(
                        CautionKind.CREOSOTE,
                        "top",
                        Measure.celsius(fire.flueTopC()),
                        "tar",
                        Measure.celsius(TAR_BELOW_C)));
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
}
