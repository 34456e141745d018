package loftcoil.engine.study;

import java.util.OptionalDouble;
import loftcoil.engine.sheet.Figure;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.engine.sheet.SheetFigure;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;

/**
 * One figure of two designs side by side.
 *
 * @param key where the figure stands in the sheet's JSON; a tap goes by its name, as in {@code taps[wash tub].flowLPerMin}
 * @param group the figures it belongs to
 * @param label what it is called, with the tap or month it belongs to
 * @param figure what it is
 * @param before the earlier design's; empty where it has no such figure
 * @param after the later design's; empty where it has no such figure
 */
public record Row(
        String key, FigureGroup group, String label, Figure<?> figure, OptionalDouble before, OptionalDouble after) {

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
        return switch (figure.better()) {
            case NONE -> Trend.DIFFERENT;
            case MORE -> more > 0 ? Trend.BETTER : Trend.WORSE;
            case LESS -> more < 0 ? Trend.BETTER : Trend.WORSE;
        };
    }

    /** Whether it is one of the few that are shown first. */
    public boolean main() {
        return figure.main() && group.main();
    }

    /** The unit of both values; empty for a plain number. */
    public String unit() {
        return figure.kind().ownUnit();
    }

    /** The unit in which {@link #shownBefore}, {@link #shownAfter} and {@link #shownDifference} are written. */
    public String shownUnit(Units units) {
        return units.unit(written(0).kind());
    }

    /** The earlier design's figure with the digits a person can use; empty where it has none. */
    public String shownBefore(Units units) {
        return before.isPresent() ? units.number(written(before.getAsDouble())) : "";
    }

    /** The later design's figure with the digits a person can use; empty where it has none. */
    public String shownAfter(Units units) {
        return after.isPresent() ? units.number(written(after.getAsDouble())) : "";
    }

    /** What the later design has more, with its sign, in the digits of the figure; empty where either has none. */
    public String shownDifference(Units units) {
        return difference().isPresent() ? units.signed(step(written(difference().getAsDouble()))) : "";
    }

    /** Both values and what is between them have one unit. */
    private Measure written(double value) {
        return figure.measure(value, Math.max(Math.abs(before.orElse(0)), Math.abs(after.orElse(0))));
    }

    /** What is between two temperatures is none: nothing more is no °F more, not 32. */
    private static Measure step(Measure between) {
        return between.kind() == MeasureKind.TEMP_C
                ? new Measure(between.value(), MeasureKind.TEMP_DIFF_K, between.finer(), between.bare())
                : between;
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
        return new Row(known.key(), known.group(), known.label(), known.figure(), before, after);
    }
}
