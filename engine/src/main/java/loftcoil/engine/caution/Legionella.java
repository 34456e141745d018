package loftcoil.engine.caution;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Water that stands warm for long and is never hot enough to kill what grows in it. */
final class Legionella implements CautionRule {

    /** Longest time between two thorough heatings, days; common practice, no source. */
    static final double MOST_DAYS = 7;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.year()
                .filter(year -> year.longestWarmDays() > MOST_DAYS)
                .ifPresent(year -> findings.cautionAs(
                        CautionKind.LEGIONELLA,
                        "year",
                        "days",
                        new Measure(year.longestWarmDays(), MeasureKind.COUNT),
                        "death",
                        death(year.hottestTankC()),
                        "most",
                        new Measure(MOST_DAYS, MeasureKind.COUNT)));
    }

    private static MeasuredText death(double hottestC) {
        double lowC = LegionellaDeath.TEMPERATURE.low();
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
