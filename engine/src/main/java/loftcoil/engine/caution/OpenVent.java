package loftcoil.engine.caution;

import loftcoil.engine.design.Vent;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;

/**
 * The open vent: the one way out for steam that nobody can shut. Hot water in the vent is lighter than cold in the feed, so it
 * stands higher; the rule of thumb allows 40 mm for each metre, and water from 4 to 100 °C loses 4.2 % of its density.
 */
final class OpenVent implements CautionRule {

    /** Least bore, m; BS 6700, from memory. */
    static final double LEAST_BORE_M = 0.019;

    /** Play between nominal bores of tube standards, m: a 22 mm tube of any wall counts as the 22 mm pipe of the rule. */
    private static final double PLAY_M = 0.0005;

    /**
     * How far a vent has to rise above the waterline: V = 0.04 H + 0.15 m, UK Water Regulations guide G20.3, as restated in
     * public; written for gravity circulation.
     *
     * @param headM waterline above the lowest heated point, m
     */
    static double leastRiseM(double headM) {
        return 0.04 * headM + 0.15;
    }

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety().vent().ifPresentOrElse(vent -> judge(vent, facts, findings), () -> findings.ask("safety.vent"));
    }

    private static void judge(Vent vent, CautionFacts facts, Findings findings) {
        switch (vent.kind()) {
            case OPEN_PIPE -> pipe(vent, facts, findings);
            case SEALED ->
                findings.caution(
                        CautionKind.SEALED,
                        "tank",
                        Measure.litres(facts.design().tank().volumeL()));
            case NONE ->
                findings.caution(
                        CautionKind.VENT_NONE,
                        "tank",
                        Measure.litres(facts.design().tank().volumeL()));
            case LOOSE_LID -> {}
        }
    }

    private static void pipe(Vent vent, CautionFacts facts, Findings findings) {
        if (vent.valve().orElse(false)) {
            findings.caution(CautionKind.VENT_VALVE);
        }
        double boreM = vent.tube().flatMap(TubeTable::find).orElseThrow().boreM();
        if (boreM < LEAST_BORE_M - PLAY_M) {
            findings.caution(
                    CautionKind.VENT_BORE,
                    "bore",
                    Measure.millimetres(boreM * 1000),
                    "least",
                    Measure.millimetres(LEAST_BORE_M * 1000));
        }
        double headM =
                facts.design().tank().waterlineLevelM() - facts.design().coil().inletM();
        double leastM = leastRiseM(Math.max(0, headM));
        double risesM = vent.aboveWaterlineM().orElseThrow();
        if (risesM < leastM) {
            findings.caution(
                    CautionKind.VENT_LOW,
                    "rises",
                    Measure.metres(risesM),
                    "head",
                    Measure.metres(headM),
                    "least",
                    Measure.metres(leastM));
        }
    }
}
