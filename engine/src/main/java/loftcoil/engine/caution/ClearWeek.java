package loftcoil.engine.caution;

import java.util.List;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.words.Measure;

/** How a clear week is told of: the holes that every sentence on it has. */
final class ClearWeek {

    private ClearWeek() {}

    /** Names and values for {@link loftcoil.engine.words.Sentences#say}. */
    static List<Object> filling(ClearSpell week) {
        return List.of(
                "days",
                Measure.count(ClearSpell.DAYS),
                "month",
                CautionFacts.monthName(week.month()),
                "away",
                Measure.count(ClearSpell.AWAY_DAYS));
    }
}
