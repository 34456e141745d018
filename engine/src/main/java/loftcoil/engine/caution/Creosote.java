package loftcoil.engine.caution;

/** Tar that settles in a cool flue and burns there one day. */
final class Creosote implements CautionRule {

    /** Flue gas cooler than this leaves tar, °C: 250 °F, leaflet of the Alaska DEC, as restated in public. */
    static final double TAR_BELOW_C = 121;

    /** Wettest wood, percent of its whole mass; England's rules of 2020 for wood on sale, from memory. */
    static final double WETTEST_PCT = 20;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.fire()
                .flatMap(fire -> fire.flueTopC().stream().boxed().findFirst())
                .filter(topC -> topC < TAR_BELOW_C)
                .ifPresent(topC -> findings.caution(
                        "LC-CREOSOTE",
                        "Coil and flue leave the flue gas only %.0f °C; below %.0f °C tar settles and a chimney fire follows."
                                + " A shorter coil or a brisker fire keeps it warm; have the flue swept often.",
                        topC,
                        TAR_BELOW_C));
        facts.design()
                .fire()
                .filter(fire -> fire.moisturePct() > WETTEST_PCT)
                .ifPresent(fire -> findings.caution(
                        "LC-WET-WOOD",
                        "The wood holds %.0f %% of water; above %.0f %% it smokes, tars the flue and wastes its heat on steam.",
                        fire.moisturePct(),
                        WETTEST_PCT));
    }
}
