package loftcoil.engine.study;

import java.util.OptionalDouble;

/**
 * One figure of two designs side by side.
 *
 * @param key where the figure stands in the sheet's JSON; a tap goes by its name, as in {@code taps[wash tub].flowLPerMin}
 * @param group the figures it belongs to
 * @param label what it is called
 * @param unit its unit; empty for a plain number
 * @param wish which way is better
 * @param before the earlier design's; empty where it has no such figure
 * @param after the later design's; empty where it has no such figure
 */
public record Row(
        String key,
        FigureGroup group,
        String label,
        String unit,
        Better wish,
        OptionalDouble before,
        OptionalDouble after) {

    /**
     * Two values nearer than this share of the larger are the same: a search for a root stops well before the last digit.
     */
    public static final double SAME_SHARE = 1e-6;

    /** Two values nearer than this in their own unit are the same: what an account misses to close is no figure. */
    private static final double NOUGHT = 1e-6;

    /** After less before; empty where either has no such figure. */
    public OptionalDouble difference() {
        return before.isPresent() && after.isPresent()
                ? OptionalDouble.of(after.getAsDouble() - before.getAsDouble())
                : OptionalDouble.empty();
    }

    /** What became of the figure. */
    public Trend turn() {
        if (difference().isEmpty()) {
            return after.isPresent() ? Trend.NEW : Trend.GONE;
        }
        if (alike(SAME_SHARE)) {
            return Trend.SAME;
        }
        double more = difference().getAsDouble();
        return switch (wish) {
            case NONE -> Trend.DIFFERENT;
            case MORE -> more > 0 ? Trend.BETTER : Trend.WORSE;
            case LESS -> more < 0 ? Trend.BETTER : Trend.WORSE;
        };
    }

    /** Whether both designs have the figure, and the two values differ by no more than this share of the larger. */
    boolean alike(double share) {
        if (difference().isEmpty()) {
            return false;
        }
        double larger = Math.max(Math.abs(before.getAsDouble()), Math.abs(after.getAsDouble()));
        return Math.abs(difference().getAsDouble()) <= Math.max(NOUGHT, share * larger);
    }

    static Row of(SheetFigure known, OptionalDouble before, OptionalDouble after) {
        SheetFigure.Kind kind = known.kind();
        return new Row(known.key(), kind.group(), kind.label(), kind.unit(), kind.wish(), before, after);
    }
}
