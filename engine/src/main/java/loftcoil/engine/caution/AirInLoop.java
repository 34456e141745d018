package loftcoil.engine.caution;

import java.util.List;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Measure;

/** Air that gathers where the loop goes up and down again or the coil falls, and water drawn up above the free surface. */
final class AirInLoop implements CautionRule {

    /** A fall smaller than a bubble needs, m. */
    private static final double LEAST_M = 0.001;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (facts.tankBelowCoil()) {
            return;
        }
        double aboveM = facts.circuit().aboveWaterlineM();
        if (aboveM > 0) {
            findings.caution(CautionKind.SIPHON, "above", Measure.metres(aboveM));
            return;
        }
        double coilFallM = -facts.design().coil().riseM();
        if (coilFallM > LEAST_M) {
            findings.cautionAs(CautionKind.AIR, "coil", "fall", Measure.metres(coilFallM));
        }
        falling(facts.design().hotLegs(), -1, "hot-leg", findings);
        falling(facts.design().coldLegs(), 1, "cold-leg", findings);
    }

    private static void falling(List<Leg> legs, int wrongWay, String which, Findings findings) {
        for (Leg leg : legs) {
            double byM = wrongWay * leg.riseM();
            if (byM > LEAST_M) {
                findings.cautionAs(CautionKind.AIR, which, "leg", leg.name(), "by", Measure.metres(byM));
            }
        }
    }
}
