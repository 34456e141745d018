package loftcoil.engine.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import loftcoil.engine.design.Absence;

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
                findings.ask(
                        "safety.absence",
                        "Does the dwelling ever stand empty and cold in winter, and is everything drained then? Frost bursts"
                                + " what holds water.");
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
                        "LC-FROST-EMPTY",
                        "The dwelling stands empty in %s, when the air is %.1f °C in the mean, and is not drained. Ice"
                                + " bursts pipes and tank; the flood comes with the thaw, the sealed loop with the first"
                                + " fire.",
                        NAMES.get(month - 1),
                        means.get(month - 1)));
    }

    private static void drained(CautionFacts facts, Absence absence, Findings findings) {
        facts.design().fire().ifPresent(fire -> {
            Set<Integer> lit = Set.copyOf(fire.months());
            absence.months().stream()
                    .filter(lit::contains)
                    .findFirst()
                    .ifPresent(month -> findings.caution(
                            "LC-DRY-FIRE",
                            "In %s the system is drained, and the fire is lit in that month. A dry coil glows, its joints melt,"
                                    + " and water let into it flashes to steam. Fill the loop before lighting, never after.",
                            NAMES.get(month - 1)));
        });
    }
}
