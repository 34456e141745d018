package loftcoil.engine.caution;

import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Window;
import loftcoil.engine.sun.HottestPanes;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Plain glass before a tank hot enough to crack it. */
final class HotGlass implements CautionRule {

    /** Hottest face of a tank that the panes are reckoned with, °C. */
    private static final double HOTTEST_C = 110;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Design design = facts.design();
        hottestTankC(facts).ifPresent(tankC -> design.hottestPanes(Math.min(tankC, HOTTEST_C))
                .ifPresent(panes -> judge(design.window().orElseThrow(), panes, tankC, findings)));
    }

    /** Before a fire the tank may come to boil; without one the year and its clear week say how hot it gets. */
    private static OptionalDouble hottestTankC(CautionFacts facts) {
        if (facts.heated()) {
            return OptionalDouble.of(
                    facts.circuit().boilingC(facts.design().tank().waterlineLevelM()));
        }
        return facts.hottestTankAtMostC();
    }

    private static void judge(Window window, HottestPanes panes, double tankC, Findings findings) {
        int needed = panes.toughened();
        if (needed > window.toughened().orElse(0)) {
            findings.caution(
                    CautionKind.GLASS,
                    "tank",
                    Measure.celsius(tankC),
                    "air",
                    Measure.celsius(panes.airC()),
                    "inner",
                    Measure.celsius(panes.innermostC()),
                    "limit",
                    new Measure(HottestPanes.PLAIN_STANDS_K, MeasureKind.TEMP_DIFF_K),
                    "needed",
                    Measure.count(needed),
                    "all",
                    Measure.count(window.panes()));
        }
    }
}
