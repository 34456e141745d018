package loftcoil.engine.caution;

import java.util.List;
import java.util.Locale;
import loftcoil.engine.design.Leg;

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
            findings.caution(
                    "LC-SIPHON",
                    "The loop rises %.2f m above the waterline: the pressure there is below that of the air, air comes"
                            + " out of the water and breaks the flow, and water boils sooner.",
                    aboveM);
            return;
        }
        double coilFallM = -facts.design().coil().riseM();
        if (coilFallM > LEAST_M) {
            findings.caution(
                    "LC-AIR",
                    "The coil falls by %.2f m from its inlet to its outlet: its bubbles rise against the flow, and the flow"
                            + " can start the wrong way round.",
                    coilFallM);
        }
        falling(facts.design().hotLegs(), -1, "falls by %.2f m on its way up to the tank", findings);
        falling(facts.design().coldLegs(), 1, "rises by %.2f m on its way down to the coil", findings);
    }

    private static void falling(List<Leg> legs, int wrongWay, String how, Findings findings) {
        for (Leg leg : legs) {
            double byM = wrongWay * leg.riseM();
            if (byM > LEAST_M) {
                findings.caution(
                        "LC-AIR",
                        "'%s' %s: air gathers at the high point and can stop the flow while the fire burns.",
                        leg.name(),
                        String.format(Locale.ROOT, how, byM));
            }
        }
    }
}
