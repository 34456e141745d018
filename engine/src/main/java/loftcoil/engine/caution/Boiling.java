package loftcoil.engine.caution;

import loftcoil.engine.loop.BoilMargin;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.Circulates;

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
        findings.caution("LC-BOIL", "%s", boils.words());
        return true;
    }

    private static boolean near(Circulates circulates, Findings findings) {
        BoilMargin margin = circulates.flow().boilMargin();
        if (!(margin.marginK() < SMALL_MARGIN_K)) {
            return false;
        }
        findings.caution(
                "LC-BOIL-NEAR",
                "The %s comes within %.1f °C of boiling (%.1f °C there). A brisk fire or a little air takes that up:"
                        + " scalding water and steam.",
                margin.where(),
                margin.marginK(),
                margin.boilingC());
        return true;
    }

    private static void harder(CautionFacts facts, Findings findings) {
        for (HarderCase harder : facts.harder()) {
            if (harder.search().circulation() instanceof Boils boils) {
                findings.caution(
                        "LC-BOIL-HARD",
                        "As computed the water stays below boiling, but not %s: %s",
                        harder.when(),
                        boils.words());
                return;
            }
        }
    }

    private static void tank(CautionFacts facts, Findings findings) {
        double boilingC = facts.circuit().boilingC(facts.design().tank().waterlineLevelM());
        facts.year()
                .filter(year -> year.hottestTankC() > boilingC - SMALL_TANK_MARGIN_K)
                .ifPresent(year -> findings.caution(
                        "LC-BOIL-TANK",
                        "In the year the tank comes to %.1f °C; its water boils at %.1f °C. It steams, and whoever"
                                + " opens a tap is scalded at once.",
                        year.hottestTankC(),
                        boilingC));
    }
}
