package loftcoil.engine.caution;

import loftcoil.engine.design.Vent;
import loftcoil.engine.pipe.TubeTable;

/**
 * The open vent: the one way out for steam that nobody can shut. Hot water in the vent is lighter than cold in the feed, so it
 * stands higher; the rule of thumb allows 40 mm for each metre, and water from 4 to 100 °C loses 4.2 % of its density.
 */
final class OpenVent implements CautionRule {

    /** Least bore, m; BS 5449, from memory. */
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
        facts.safety()
                .vent()
                .ifPresentOrElse(
                        vent -> judge(vent, facts, findings),
                        () -> findings.ask(
                                "safety.vent",
                                "Is the tank open to the air, by a loose lid or an open pipe that nothing can shut? Without one a hot tank"
                                        + " can burst."));
    }

    private static void judge(Vent vent, CautionFacts facts, Findings findings) {
        switch (vent.kind()) {
            case OPEN_PIPE -> pipe(vent, facts, findings);
            case SEALED ->
                findings.caution(
                        "LC-SEALED",
                        "The %.0f L tank is sealed. Heated by a fire that cannot be switched off it is a boiler under"
                                + " pressure: it needs relief valves and is no work for a self-builder.",
                        facts.design().tank().volumeL());
            case NONE ->
                findings.caution(
                        "LC-VENT-NONE",
                        "The %.0f L tank has no vent. Steam has no way out, and water that boils bursts the tank.",
                        facts.design().tank().volumeL());
            case LOOSE_LID -> {}
        }
    }

    private static void pipe(Vent vent, CautionFacts facts, Findings findings) {
        if (vent.valve().orElse(false)) {
            findings.caution(
                    "LC-VENT-VALVE",
                    "There is a valve in the open vent. Shut, the tank is a sealed boiler that can burst.");
        }
        double boreM = vent.tube().flatMap(TubeTable::find).orElseThrow().boreM();
        if (boreM < LEAST_BORE_M - PLAY_M) {
            findings.caution(
                    "LC-VENT-BORE",
                    "The open vent has a bore of %.1f mm; it should have at least %.0f mm, or scale, ice and boiling water"
                            + " block it.",
                    boreM * 1000,
                    LEAST_BORE_M * 1000);
        }
        double headM =
                facts.design().tank().waterlineLevelM() - facts.design().coil().inletM();
        double leastM = leastRiseM(Math.max(0, headM));
        double risesM = vent.aboveWaterlineM().orElseThrow();
        if (risesM < leastM) {
            findings.caution(
                    "LC-VENT-LOW",
                    "The open vent ends %.2f m above the waterline; over a loop %.2f m high it should be %.2f m, or hot"
                            + " water runs out of it.",
                    risesM,
                    headM,
                    leastM);
        }
    }
}
