package loftcoil.engine.caution;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Window;
import loftcoil.engine.tank.SeenFace;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Panes that shine past the tank: what they let in beside it warms the loft, not the water. */
final class PanesPastTank implements CautionRule {

    /** Share of the panes that may pass by unsaid: no outline is known closer. Common practice, no source. */
    static final double UNSAID_SHARE = 0.25;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.design().window().ifPresent(panes -> judge(facts.design(), panes, findings));
    }

    private static void judge(Design design, Window panes, Findings findings) {
        SeenFace face = design.tank().shape().seenFrom(panes.tiltDeg());
        double creditedM2 = design.creditedM2();
        if (creditedM2 < (1 - UNSAID_SHARE) * panes.areaM2()) {
            findings.caution(
                    CautionKind.SUN_FACE,
                    "panes",
                    area(panes.areaM2()),
                    "face",
                    area(face.outlineM2()),
                    "credited",
                    area(creditedM2),
                    "reflected",
                    new Measure(panes.reflected(), MeasureKind.SHARE));
        }
    }

    private static Measure area(double areaM2) {
        return new Measure(areaM2, MeasureKind.AREA_M2);
    }
}
