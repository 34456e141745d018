package loftcoil.engine.caution;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tank;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.tank.LegionellaLife;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Water that stands warm for long and is never hot enough to kill what grows in it. */
final class Legionella implements CautionRule {

    /** Longest time between two thorough heatings, days; common practice, no source. */
    static final double MOST_DAYS = 7;

    private static final double DAYS_OF_A_YEAR = 365;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.year().filter(year -> year.longestWarmDays() > MOST_DAYS).ifPresent(year -> raise(facts, year, findings));
    }

    private static void raise(CautionFacts facts, YearFacts year, Findings findings) {
        Measure from = Measure.celsius(LegionellaLife.GROWS_FROM_C).withoutUnit();
        Measure to = Measure.celsius(LegionellaLife.GROWS_TO_C);
        MeasuredText grows = CautionKind.LEGIONELLA.part(
                "grows",
                "death",
                death(year.hottestTankC(), facts.hotterClear()),
                "most",
                new Measure(MOST_DAYS, MeasureKind.COUNT),
                "beyond",
                beyond(facts.design()));
        if (year.longestWarmDays() >= DAYS_OF_A_YEAR) {
            findings.cautionAs(CautionKind.LEGIONELLA, "all-year", "from", from, "to", to, "grows", grows);
        } else {
            Measure days = new Measure(year.longestWarmDays(), MeasureKind.COUNT);
            findings.cautionAs(CautionKind.LEGIONELLA, "year", "days", days, "from", from, "to", to, "grows", grows);
        }
    }

    /** What heating the tank through does not reach. */
    private static MeasuredText beyond(Design design) {
        boolean mixed = design.taps().stream().anyMatch(tap -> tap.mixerC().isPresent());
        Tank tank = design.tank();
        Measure under = Measure.litres(tank.volumeL() * tank.coldPortM() / tank.heightM());
        return CautionKind.LEGIONELLA.part(mixed ? "below-and-mixed" : "below", "under", under);
    }

    private static MeasuredText death(double hottestC, Optional<ClearSpell> clear) {
        double lowC = LegionellaDeath.TEMPERATURE.low();
        if (hottestC < lowC && clear.isPresent()) {
            return CautionKind.LEGIONELLA.part(
                    "little-dies-but-clear",
                    "hottest",
                    Measure.celsius(hottestC),
                    "low",
                    Measure.celsius(lowC),
                    "clear",
                    Measure.celsius(clear.get().hottestTankC()));
        }
        if (hottestC < lowC) {
            return CautionKind.LEGIONELLA.part(
                    "little-dies", "hottest", Measure.celsius(hottestC), "low", Measure.celsius(lowC));
        }
        return CautionKind.LEGIONELLA.part(
                "dies",
                "cool",
                Measure.minutes(LegionellaDeath.ninetyPercentMin(50)),
                "hot",
                Measure.minutes(LegionellaDeath.ninetyPercentMin(60)));
    }
}
