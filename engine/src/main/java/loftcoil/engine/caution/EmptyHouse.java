package loftcoil.engine.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import loftcoil.engine.design.Absence;
import loftcoil.engine.design.Site;

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
        Site site = facts.design().site();
        facts.safety().absence().ifPresentOrElse(absence -> judge(facts, absence, findings), () -> {
            if (site.monthly().meanAirC().stream().anyMatch(mean -> mayFreeze(site, mean))) {
                findings.ask(
                        "safety.absence",
                        "Does the dwelling ever stand empty and cold in winter, and is everything drained then? Frost bursts"
                                + " what holds water.");
            }
        });
    }

    /** Whether an unheated house may freeze in a month of that mean: where it is known, the coldest night decides. */
    private static boolean mayFreeze(Site site, double meanC) {
        return meanC < COLD_MONTH_C && site.coldestNightC().orElse(Double.NEGATIVE_INFINITY) < Frost.FROST_C;
    }

    private static void judge(CautionFacts facts, Absence absence, Findings findings) {
        if (absence.drained()) {
            drained(facts, absence, findings);
            return;
        }
        Site site = facts.design().site();
        List<Double> means = site.monthly().meanAirC();
        absence.months().stream()
                .filter(month -> mayFreeze(site, means.get(month - 1)))
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
