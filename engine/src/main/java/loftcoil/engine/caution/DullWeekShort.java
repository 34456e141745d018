package loftcoil.engine.caution;

import java.util.Optional;
import loftcoil.engine.design.Fire;
import loftcoil.engine.sun.Weather;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** A dull week that leaves the taps short where mean days do not. */
final class DullWeekShort implements CautionRule {

    /** Share of the heat missing from which it is told: water wanted at 40 °C comes at 25; common practice, no source. */
    static final double MUCH = 0.5;

    /** Least part of it that the dullness brings; what mean days miss too stands in the months; common practice, no source. */
    static final double LEAST_OF_THE_DULLNESS = 0.15;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.weeks()
                .dull()
                .filter(week -> week.shortShare() + YearFacts.BLUR_SHARE >= MUCH
                        && week.ofTheDullness() + YearFacts.BLUR_SHARE >= LEAST_OF_THE_DULLNESS)
                .ifPresent(week -> findings.caution(
                        CautionKind.DULL_WEEK,
                        "month",
                        CautionFacts.monthName(week.month()),
                        "sun",
                        share(Weather.DULL_SHARE),
                        "short",
                        share(week.shortShare()),
                        "mean",
                        share(week.meanShortShare()),
                        "cure",
                        CautionKind.DULL_WEEK.part(cure(facts.design().fire(), week.month()))));
    }

    private static String cure(Optional<Fire> fire, int month) {
        return fire.map(lit -> lit.months().contains(month) ? "burn-longer" : "light")
                .orElse("no-fire");
    }

    private static Measure share(double of) {
        return new Measure(of, MeasureKind.SHARE);
    }
}
