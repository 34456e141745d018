package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import loftcoil.engine.loop.BoilMargin;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Water that boils in the loop or comes near it: steam, scalding water thrown out of the vent, knocking that breaks joints. */
final class Boiling implements CautionRule {

    /** Margin of the sheet's own state below which a fiercer fire may bring the water to the boil, K; common practice. */
    static final double SMALL_MARGIN_K = 10;

    /**
     * Share of the warming in the coil that what is not known of the flow may add to it: a flow 15 % less than computed, which is what
     * {@link loftcoil.engine.loop.Circuit} leaves open.
     */
    static final double DOUBT_OF_WARMING = 1 / 0.85 - 1;

    /** Margin of the tank itself, K; common practice. */
    static final double SMALL_TANK_MARGIN_K = 5;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (facts.lit().circulation() instanceof Boils boils) {
            findings.caution(CautionKind.BOIL, "finding", boils.finding());
        } else if (!harder(facts, findings)) {
            near(facts, findings);
        }
        tank(facts, findings);
    }

    private static boolean harder(CautionFacts facts, Findings findings) {
        for (HarderCase harder : facts.harder()) {
            if (harder.search().circulation() instanceof Boils boils) {
                findings.caution(CautionKind.BOIL_HARD, "when", harder.when(), "finding", boils.finding());
                return true;
            }
        }
        return false;
    }

    private static void near(CautionFacts facts, Findings findings) {
        HarderCase own = HarderCase.tankAt(facts.circuit().setting().tankC(), facts.lit());
        Stream.concat(
                        facts.harder().stream().filter(harder -> within(harder, Boiling::inDoubtK)),
                        Stream.of(own).filter(asked -> within(asked, flow -> SMALL_MARGIN_K)))
                .findFirst()
                .ifPresent(near -> near(near, findings));
    }

    private static boolean within(HarderCase state, ToDoubleFunction<SteadyFlow> leastK) {
        return state.search()
                .forward()
                .filter(flow -> flow.boilMargin().marginK() < leastK.applyAsDouble(flow))
                .isPresent();
    }

    private static double inDoubtK(SteadyFlow flow) {
        return DOUBT_OF_WARMING * (flow.coil().endC() - flow.coil().startC());
    }

    private static void near(HarderCase state, Findings findings) {
        BoilMargin margin = state.search().forward().orElseThrow().boilMargin();
        findings.caution(
                CautionKind.BOIL_NEAR,
                "when",
                state.when(),
                "where",
                margin.where(),
                "margin",
                Measure.kelvins(margin.marginK()),
                "boiling",
                Measure.celsius(margin.boilingC()));
    }

    private static void tank(CautionFacts facts, Findings findings) {
        double boilingC = facts.circuit().boilingC(facts.design().tank().waterlineLevelM());
        Optional<YearFacts> boils = facts.year().filter(year -> year.boilingH() > 0);
        boils.ifPresent(year -> steams(year, boilingC, findings));
        if (boils.isEmpty()) {
            facts.hottestTankC().stream()
                    .filter(hottestC -> hottestC + YearFacts.BLUR_K > boilingC - SMALL_TANK_MARGIN_K)
                    .forEach(hottestC ->
                            near(facts.hotterClear(), Measure.celsius(hottestC), Measure.celsius(boilingC), findings));
            facts.singsFromC().ifPresent(fromC -> facts.year()
                    .filter(year -> year.hottestTankC() + YearFacts.BLUR_K >= fromC)
                    .ifPresent(year -> sings(year, fromC, findings)));
        }
    }

    private static void steams(YearFacts year, double boilingC, Findings findings) {
        findings.cautionAs(
                CautionKind.BOIL_TANK,
                "steams",
                "hours",
                new Measure(year.boilingH(), MeasureKind.TIME_H),
                "steam",
                Measure.litres(year.steamL()),
                "hottest",
                Measure.celsius(year.hottestTankC()),
                "boiling",
                Measure.celsius(boilingC));
    }

    private static void near(Optional<ClearSpell> clear, Measure hottest, Measure boiling, Findings findings) {
        List<Object> filling = new ArrayList<>(List.of("hottest", hottest, "boiling", boiling));
        clear.ifPresent(week -> filling.addAll(ClearWeek.filling(week)));
        findings.cautionAs(CautionKind.BOIL_TANK, clear.isPresent() ? "clear" : "near", filling.toArray());
    }

    private static void sings(YearFacts year, double fromC, Findings findings) {
        findings.caution(
                CautionKind.SING, "from", Measure.celsius(fromC), "hottest", Measure.celsius(year.hottestTankC()));
    }
}
