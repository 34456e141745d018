package loftcoil.engine.caution;

import java.util.List;
import loftcoil.engine.design.Leg;
import loftcoil.engine.loop.LegEnds;
import loftcoil.engine.words.Measure;

/** Bare hot copper that somebody can touch. */
final class HotPipe implements CautionRule {

    /** Bare metal that burns within ten seconds, °C; ISO 13732-1, from memory. */
    static final double BURNS_C = 55;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        List<Leg> hot = facts.design().hotLegs();
        int first = facts.design().coldLegs().size() + 1;
        facts.lit().forward().ifPresent(flow -> {
            for (int i = 0; i < hot.size(); i++) {
                LegEnds ends = flow.legs().get(first + i);
                judge(hot.get(i), Math.max(ends.startC(), ends.endC()), findings);
            }
        });
    }

    private static void judge(Leg leg, double hottestC, Findings findings) {
        boolean bare = leg.lagging().map(lagging -> lagging.thicknessMm() == 0).orElse(true);
        if (bare && hottestC > BURNS_C) {
            findings.caution(CautionKind.HOT_PIPE, "leg", leg.name(), "hottest", Measure.celsius(hottestC));
        }
    }
}
