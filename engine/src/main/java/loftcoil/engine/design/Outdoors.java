package loftcoil.engine.design;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Pipes that run outdoors: round them is the air of the place, not a stated temperature. A year takes each month's mean for them, steady
 * figures the mean of the months of fire, a clear week its own, and a verdict looks at the coldest night and at the warmest month of fire
 * besides; a fire is tried after the coldest night on which it may be lit.
 */
public final class Outdoors {

    private static final int MONTHS = 12;

    private Outdoors() {}

    /** Whether a leg of the design runs outdoors. */
    public static boolean any(Design design) {
        return Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .anyMatch(Leg::isOutdoors);
    }

    /**
     * The design with the air outdoors at a temperature round the clock: legs that run there have it round them; the same design where
     * none does.
     *
     * @param airC air outdoors, °C; what lies outside the range of a leg's surroundings is brought to its end
     */
    public static Design at(Design design, double airC) {
        if (!any(design)) {
            return design;
        }
        double withinC = Math.min(Math.max(airC, LegFields.AROUND_RANGE.low()), LegFields.AROUND_RANGE.high());
        return DesignTable.with(
                DesignTable.with(design, DesignTable.COLD_LEGS, legs(design.coldLegs(), withinC)),
                DesignTable.HOT_LEGS,
                legs(design.hotLegs(), withinC));
    }

    private static List<Leg> legs(List<Leg> legs, double airC) {
        return legs.stream().map(leg -> leg.isOutdoors() ? leg.amid(airC) : leg).toList();
    }

    /** Mean air of the months in which the fire is lit, of the whole year where there is no fire or it is never lit, °C. */
    public static double usualC(Design design) {
        return litMonths(design).stream()
                .mapToDouble(month -> meanC(design, month))
                .average()
                .orElseThrow();
    }

    /** Mean air of the coldest of these months, °C. */
    public static double coldestLitC(Design design) {
        return litMonths(design).stream()
                .mapToDouble(month -> meanC(design, month))
                .min()
                .orElseThrow();
    }

    /** Mean air of the warmest of these months, °C. */
    public static double warmestLitC(Design design) {
        return litMonths(design).stream()
                .mapToDouble(month -> meanC(design, month))
                .max()
                .orElseThrow();
    }

    private static List<Integer> litMonths(Design design) {
        return design.fire()
                .map(Fire::months)
                .filter(months -> !months.isEmpty())
                .orElse(IntStream.rangeClosed(1, MONTHS).boxed().toList());
    }

    private static double meanC(Design design, int month) {
        return design.site().monthly().meanAirC().get(month - 1);
    }
}
