package loftcoil.engine.caution;

import java.util.Locale;

/** Water that stands warm for long and is never hot enough to kill what grows in it. */
final class Legionella implements CautionRule {

    /** Longest time between two thorough heatings, days; common practice, no source. */
    static final double MOST_DAYS = 7;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.year()
                .filter(year -> year.longestWarmDays() > MOST_DAYS)
                .ifPresent(year -> findings.caution(
                        "LC-LEGIONELLA",
                        "For %.0f days on end the tank holds water between 25 and 45 °C and is never kept at 60 °C for half"
                                + " an hour: legionella grows in it, and spray from a rose or a tap carries it into the"
                                + " lungs. %s Heat the whole tank through at least every %.0f days, or use it for no"
                                + " spray.",
                        year.longestWarmDays(),
                        death(year.hottestTankC()),
                        MOST_DAYS));
    }

    private static String death(double hottestC) {
        double lowC = LegionellaDeath.TEMPERATURE.low();
        if (hottestC < lowC) {
            return String.format(
                    Locale.ROOT,
                    "At the %.0f °C it reaches at most, little dies: that takes more than %.0f °C.",
                    hottestC,
                    lowC);
        }
        return String.format(
                Locale.ROOT,
                "Nine in ten die in %.0f min at 50 °C, in %.0f min at 60 °C, and faster above.",
                LegionellaDeath.ninetyPercentMin(50),
                LegionellaDeath.ninetyPercentMin(60));
    }
}
