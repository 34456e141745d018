package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.loop.BoilMargin;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.Circulates;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.words.Measure;

/** Water that boils in the loop or comes near it: steam, scalding water thrown out of the vent, knocking that breaks joints. */
final class Boiling implements CautionRule {

    /** Margin below which an uneven fire may bring the water to the boil, K; common practice. */
    static final double SMALL_MARGIN_K = 10;

    /** Margin of the tank itself, K; common practice. */
    static final double SMALL_TANK_MARGIN_K = 5;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        boolean raised = facts.lit()
                .circulation()
                .match(flow -> near(flow, findings), boils -> boils(boils, findings), still -> false);
        if (!raised) {
            harder(facts, findings);
        }
        tank(facts, findings);
    }

    private static boolean boils(Boils boils, Findings findings) {
        findings.caution(CautionKind.BOIL, "finding", boils.finding());
        return true;
    }

    private static boolean near(Circulates circulates, Findings findings) {
        BoilMargin margin = circulates.flow().boilMargin();
        if (!(margin.marginK() < SMALL_MARGIN_K)) {
            return false;
        }
        findings.caution(
                CautionKind.BOIL_NEAR,
                "where",
                margin.where(),
                "margin",
                Measure.degrees(margin.marginK()),
                "boiling",
                Measure.celsius(margin.boilingC()));
        return true;
    }

    private static void harder(CautionFacts facts, Findings findings) {
        for (HarderCase harder : facts.harder()) {
            if (harder.search().circulation() instanceof Boils boils) {
                findings.caution(CautionKind.BOIL_HARD, "when", harder.when(), "finding", boils.finding());
                return;
            }
        }
    }

    private static void tank(CautionFacts facts, Findings findings) {
        double boilingC = facts.circuit().boilingC(facts.design().tank().waterlineLevelM());
        facts.hottestTankC().ifPresent(hottestC -> {
            if (hottestC + YearFacts.BLUR_K > boilingC - SMALL_TANK_MARGIN_K) {
                tank(facts.hotterClear(), Measure.celsius(hottestC), Measure.celsius(boilingC), findings);
            }
        });
    }

    private static void tank(Optional<ClearSpell> clear, Measure hottest, Measure boiling, Findings findings) {
        List<Object> filling = new ArrayList<>(List.of("hottest", hottest, "boiling", boiling));
        clear.ifPresent(week -> filling.addAll(ClearWeek.filling(week)));
        findings.cautionAs(CautionKind.BOIL_TANK, clear.isPresent() ? "clear" : "year", filling.toArray());
    }
}
