package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Leg;
import loftcoil.engine.loop.LegEnds;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.pipe.LaggingMaterial;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.words.Measure;

/** Lagging hotter than its maker lets it be: foam beside a flue melts, smokes and burns. */
final class LaggingLimit implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        List<Leg> legs = new ArrayList<>(facts.design().coldLegs());
        legs.addAll(facts.design().hotLegs());
        int cold = facts.design().coldLegs().size();
        for (int i = 0; i < legs.size(); i++) {
            int inLoop = i < cold ? i : i + 1;
            double waterC =
                    facts.lit().forward().map(flow -> hottestC(flow, inLoop)).orElse(0.0);
            judge(legs.get(i), Math.max(waterC, legs.get(i).aroundC()), findings);
        }
    }

    private static double hottestC(SteadyFlow flow, int leg) {
        LegEnds ends = flow.legs().get(leg);
        return Math.max(ends.startC(), ends.endC());
    }

    private static void judge(Leg leg, double hottestC, Findings findings) {
        leg.lagging().filter(lagging -> lagging.thicknessMm() > 0).ifPresent(lagging -> {
            LaggingMaterial material = LaggingTable.find(lagging.material()).orElseThrow();
            if (hottestC > material.serviceLimitC()) {
                findings.caution(
                        CautionKind.LAGGING_HOT,
                        "lagging",
                        material.name(),
                        "leg",
                        leg.name(),
                        "hottest",
                        Measure.celsius(hottestC),
                        "most",
                        Measure.celsius(material.serviceLimitC()));
            }
        });
    }
}
