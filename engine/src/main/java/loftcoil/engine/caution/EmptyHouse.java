package loftcoil.engine.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import loftcoil.engine.design.Absence;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.words.Measure;

/** A dwelling left empty: frost in what was not drained, fire under what was. */
final class EmptyHouse implements CautionRule {

    /** Mean of a month below which an unheated house freezes even where nobody said the coldest night, °C; common practice, no source. */
    static final double COLD_MONTH_C = 5;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        ColdNight night = ColdNight.of(facts.design());
        facts.safety().absence().ifPresentOrElse(absence -> judge(facts, absence, findings), () -> {
            if (facts.design().site().monthly().meanAirC().stream().anyMatch(mean -> mayFreeze(night, mean))) {
                findings.ask("safety.absence");
            }
        });
    }

    /** Whether an unheated house may freeze in a month of that mean: a mild coldest night that is known says no. */
    private static boolean mayFreeze(ColdNight night, double meanC) {
        boolean mild = night.isSaid() && night.nightC() >= Frost.FROST_C;
        return !mild && night.emptyHouseC(meanC) < Frost.FROST_C;
    }

    private static void judge(CautionFacts facts, Absence absence, Findings findings) {
        if (absence.drained()) {
            drained(facts, absence, findings);
            return;
        }
        ColdNight night = ColdNight.of(facts.design());
        List<Double> means = facts.design().site().monthly().meanAirC();
        absence.months().stream()
                .filter(month -> mayFreeze(night, means.get(month - 1)))
                .min(Comparator.comparing(month -> means.get(month - 1)))
                .ifPresent(month -> raise(night, month, means.get(month - 1), findings));
    }

    private static void raise(ColdNight night, int month, double meanC, Findings findings) {
        Object[] filling = {
            "month", CautionFacts.monthName(month),
            "air", Measure.celsius(meanC),
            "inside", Measure.celsius(night.emptyHouseC(meanC))
        };
        if (night.isSaid() || meanC < COLD_MONTH_C) {
            findings.cautionAs(CautionKind.FROST_EMPTY, "month", filling);
        } else {
            findings.milderAs(CautionKind.FROST_EMPTY, Severity.WARNING, "guess", filling);
        }
    }

    private static void drained(CautionFacts facts, Absence absence, Findings findings) {
        facts.design().fire().ifPresent(fire -> {
            Set<Integer> lit = Set.copyOf(fire.months());
            absence.months().stream()
                    .filter(lit::contains)
                    .findFirst()
                    .ifPresent(month -> findings.caution(CautionKind.DRY_FIRE, "month", CautionFacts.monthName(month)));
        });
    }
}
