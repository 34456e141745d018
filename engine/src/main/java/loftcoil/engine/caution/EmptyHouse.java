package loftcoil.engine.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import loftcoil.engine.design.Absence;
import loftcoil.engine.words.Measure;

/** A dwelling left empty: frost in what was not drained, fire under what was. */
final class EmptyHouse implements CautionRule {

    /** Mean of a month below which its nights may freeze an unheated house, °C; common practice, no source. */
    static final double COLD_MONTH_C = 5;

    private static final List<String> NAMES = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    @Override
    public void look(CautionFacts facts, Findings findings) {
        List<Double> means = facts.design().site().monthly().meanAirC();
        double coldest = means.stream().min(Comparator.naturalOrder()).orElseThrow();
        facts.safety().absence().ifPresentOrElse(absence -> judge(facts, absence, means, findings), () -> {
            if (coldest < COLD_MONTH_C) {
                findings.ask("safety.absence");
            }
        });
    }

    private static void judge(CautionFacts facts, Absence absence, List<Double> means, Findings findings) {
        if (absence.drained()) {
            drained(facts, absence, findings);
            return;
        }
        absence.months().stream()
                .filter(month -> means.get(month - 1) < COLD_MONTH_C)
                .min(Comparator.comparing(month -> means.get(month - 1)))
                .ifPresent(month -> findings.caution(
                        CautionKind.FROST_EMPTY,
                        "month",
                        NAMES.get(month - 1),
                        "air",
                        Measure.celsius(means.get(month - 1))));
    }

    private static void drained(CautionFacts facts, Absence absence, Findings findings) {
        facts.design().fire().ifPresent(fire -> {
            Set<Integer> lit = Set.copyOf(fire.months());
            absence.months().stream()
                    .filter(lit::contains)
                    .findFirst()
                    .ifPresent(month -> findings.caution(CautionKind.DRY_FIRE, "month", NAMES.get(month - 1)));
        });
    }
}
